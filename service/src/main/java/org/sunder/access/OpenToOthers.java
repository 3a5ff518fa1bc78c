package org.sunder.access;

/** The service would be reached by others, and no key would be asked for. */
class OpenToOthers extends RuntimeException {

    OpenToOthers(String address) {
        super("server.address is " + address + ", which others can reach, but access keys are off.");
    }
}
