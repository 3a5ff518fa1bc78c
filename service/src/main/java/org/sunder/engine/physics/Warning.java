package org.sunder.engine.physics;

import java.util.Set;

/**
 * Something a person should know about a setup that can be computed.
 *
 * @param code stable kebab-case word
 * @param text one or two sentences
 */
public record Warning(String code, String text) {

    private static final Set<String> OF_CHARGES = Set.of(
            "too-little-work",
            "coarse-measure",
            "crowded",
            "little-free",
            "area-unlike-cavity",
            "ceiling-below-handbook",
            "no-pins");

    /** Whether it changes what a charge does, so that it has to stand even where there is little room. */
    public boolean changesWhatAChargeDoes() {
        return OF_CHARGES.contains(code);
    }
}
