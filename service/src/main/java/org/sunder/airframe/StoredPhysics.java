package org.sunder.airframe;

import org.sunder.engine.physics.JointPhysics;

/** The physics of a setup as it is stored, or why there is none. */
public sealed interface StoredPhysics {

    /**
     * The setup is sound.
     *
     * @param physics what was computed
     */
    record Sound(JointPhysics physics) implements StoredPhysics {}

    /**
     * The setup cannot be read, or cannot be.
     *
     * @param finding what is wrong with the row, for people
     */
    record Unsound(String finding) implements StoredPhysics {}
}
