package org.sunder.access;

/**
 * A key just made.
 *
 * @param key what is kept of it
 * @param secret the key itself: known now and never again
 */
public record IssuedKey(AccessKey key, String secret) {

    @Override
    public String toString() {
        return "IssuedKey[" + key + "]";
    }
}
