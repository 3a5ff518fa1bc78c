package org.sunder.airframe;

import java.util.List;
import java.util.Optional;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/** The physics of a setup as it is stored, or why there is none. */
public sealed interface StoredPhysics {

    /** What is wrong with the row, for people; empty where the setup is sound. */
    Optional<String> finding();

    /**
     * The physics, where an answer rests on it.
     *
     * @throws ProblemException 422 where there is none
     */
    JointPhysics required();

    /** What a person should know of the setup; nothing where it cannot be. */
    List<Warning> warnings();

    /**
     * The setup is sound.
     *
     * @param physics what was computed
     */
    record Sound(JointPhysics physics) implements StoredPhysics {

        @Override
        public Optional<String> finding() {
            return Optional.empty();
        }

        @Override
        public JointPhysics required() {
            return physics;
        }

        @Override
        public List<Warning> warnings() {
            return physics.warnings();
        }
    }

    /**
     * The setup cannot be read, or cannot be.
     *
     * @param words what is wrong with the row, for people
     */
    record Unsound(String words) implements StoredPhysics {

        @Override
        public Optional<String> finding() {
            return Optional.of(words);
        }

        @Override
        public JointPhysics required() {
            throw new ProblemException(ProblemType.UNSOUND_SETUP, words);
        }

        @Override
        public List<Warning> warnings() {
            return List.of();
        }
    }
}
