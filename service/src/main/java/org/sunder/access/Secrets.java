package org.sunder.access;

import java.security.SecureRandom;
import java.util.Base64;
import org.sunder.persistence.Digests;

/** The text of keys: 192 random bits behind a word that scanners for leaked secrets can look for. */
final class Secrets {

    private static final String WORD = "sunder_";
    private static final int BYTES = 24;
    private static final int SHOWN = WORD.length() + 5;
    private static final SecureRandom RANDOM = new SecureRandom();

    private Secrets() {}

    static String fresh() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return WORD + Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    static String prefix(String secret) {
        return secret.substring(0, SHOWN);
    }

    /** A plain hash is enough: there are too many keys to guess, so none needs slowing down. */
    static String digest(String secret) {
        return Digests.sha256(secret);
    }
}
