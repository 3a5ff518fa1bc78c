package org.sunder.advice;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Joint;
import org.sunder.airframe.Setup;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.GroundTests;
import org.sunder.groundtest.Occasion;
import org.sunder.groundtest.VoidMark;

/** Everything that happened to an airframe, in order. */
@Service
public class History {

    private final Airframes airframes;
    private final GroundTests tests;

    History(Airframes airframes, GroundTests tests) {
        this.airframes = airframes;
        this.tests = tests;
    }

    /** What an entry tells of. */
    public enum Kind {
        AIRFRAME_ENTERED("airframe-entered"),
        AIRFRAME_ARCHIVED("airframe-archived"),
        JOINT_ADDED("joint-added"),
        SETUP_CHANGED("setup-changed"),
        TEST_FIRED("test-fired"),
        FLOWN("flown"),
        TEST_VOIDED("test-voided"),
        TEST_RESTORED("test-restored");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        @Override
        public String toString() {
            return word;
        }
    }

    /**
     * One thing that happened.
     *
     * @param at when
     * @param kind what
     * @param joint the joint it concerns
     * @param setup the setup that came into force, or that a test was fired in
     * @param test the test
     * @param mark the void or its lifting
     */
    public record Entry(
            Instant at,
            Kind kind,
            @Nullable Joint joint,
            @Nullable Setup setup,
            @Nullable GroundTest test,
            @Nullable VoidMark mark) {}

    /** The history of an airframe, oldest first. */
    @Transactional(readOnly = true)
    public List<Entry> of(UUID airframeId) {
        Airframe airframe = airframes.get(airframeId);
        List<Entry> entries = new ArrayList<>();
        entries.add(new Entry(airframe.createdAt(), Kind.AIRFRAME_ENTERED, null, null, null, null));
        List<Joint> joints = airframes.jointsOf(airframeId);
        var byJoint = tests.of(joints.stream().map(Joint::id).toList()).stream()
                .collect(Collectors.groupingBy(GroundTest::jointId));
        for (Joint joint : joints) {
            addJoint(entries, joint, byJoint.getOrDefault(joint.id(), List.of()));
        }
        if (airframe.archivedAt() != null) {
            entries.add(new Entry(airframe.archivedAt(), Kind.AIRFRAME_ARCHIVED, null, null, null, null));
        }
        entries.sort(Comparator.comparing(Entry::at));
        return List.copyOf(entries);
    }

    private void addJoint(List<Entry> entries, Joint joint, List<GroundTest> fired) {
        List<Setup> setups = airframes.setupsOf(joint.id());
        for (Setup setup : setups) {
            Kind kind = setup.revision() == 1 ? Kind.JOINT_ADDED : Kind.SETUP_CHANGED;
            entries.add(new Entry(setup.createdAt(), kind, joint, setup, null, null));
        }
        for (GroundTest test : fired) {
            Setup setup = setups.get(setups.size() - test.setupRevision());
            Instant at = test.report().firedAt().toInstant();
            Kind kind = test.occasion() == Occasion.GROUND ? Kind.TEST_FIRED : Kind.FLOWN;
            entries.add(new Entry(at, kind, joint, setup, test, null));
            for (VoidMark mark : test.marks()) {
                Kind marked = mark.voided() ? Kind.TEST_VOIDED : Kind.TEST_RESTORED;
                entries.add(new Entry(mark.at(), marked, joint, setup, test, mark));
            }
        }
    }
}
