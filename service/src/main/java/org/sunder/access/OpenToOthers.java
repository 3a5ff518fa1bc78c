package org.sunder.access;

/** The service would be reached by others, and no key would be asked for. */
class OpenToOthers extends RuntimeException {

    OpenToOthers(String address) {
        super("setting server.address: others can reach " + address + ", but access keys are off.");
    }
}
