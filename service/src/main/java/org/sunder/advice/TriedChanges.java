package org.sunder.advice;

import java.time.Clock;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupPhysics;
import org.sunder.airframe.SetupSheet;
import org.sunder.engine.physics.JointPhysics;
import org.sunder.engine.planning.EvidenceReport;

/** What a change of a setup would do to the plan, with nothing stored. */
@Service
public class TriedChanges {

    private final FleetSnapshots fleets;
    private final Findings findings;
    private final Overviews overviews;
    private final SetupPhysics physics;
    private final Clock clock;

    TriedChanges(FleetSnapshots fleets, Findings findings, Overviews overviews, SetupPhysics physics, Clock clock) {
        this.fleets = fleets;
        this.findings = findings;
        this.overviews = overviews;
        this.physics = physics;
        this.clock = clock;
    }

    /**
     * A setup tried at a joint.
     *
     * @throws org.sunder.problem.ProblemException 404 where there is no such joint, 422 naming all that is not sound
     */
    public TriedChange of(UUID jointId, SetupSheet sheet) {
        FleetSnapshot fleet = fleets.current();
        LoggedJoint logged = fleet.joint(jointId);
        boolean readable = logged.finding().isEmpty();
        SetupSheet resolved = readable ? physics.resolve(sheet, logged.setup().sheet()) : physics.resolve(sheet, "");
        int revision = logged.joint().currentRevision() + 1;
        JointAnswer before = readable ? overviews.answer(fleet, logged) : null;
        if (before != null && resolved.equals(logged.setup().sheet())) {
            return new TriedChange(before, before, revision, false);
        }
        Setup setup = new Setup(UUID.randomUUID(), jointId, revision, resolved, clock.instant(), null);
        return new TriedChange(before, answer(fleet, logged, setup), revision, true);
    }

    private JointAnswer answer(FleetSnapshot fleet, LoggedJoint logged, Setup setup) {
        JointPhysics its = physics.of(setup.sheet(), "");
        LoggedJoint tried = logged.tried(setup, its);
        return answer(new JointCase(
                fleet,
                tried,
                setup,
                findings.posteriorOfNew(fleet, setup, its.uncertainty().total())));
    }

    /**
     * What would stand were a setup of a joint in force, with all that is known today.
     *
     * @throws org.sunder.problem.ProblemException 404 where there is no such joint, 400 where it has no such setup, 422 where
     *     that cannot be read
     */
    public JointAnswer under(UUID jointId, int revision) {
        FleetSnapshot fleet = fleets.current();
        LoggedJoint logged = fleet.joint(jointId);
        Setup setup = logged.setup(revision);
        return answer(new JointCase(fleet, logged.under(revision), setup, findings.posterior(fleet, setup)));
    }

    private static JointAnswer answer(JointCase joint) {
        EvidenceReport evidence = EvidenceReport.of(joint.planning(Estimates.TARGET));
        NextAdvice next = Advising.next(joint, evidence);
        return new JointAnswer(
                new Standing(
                        joint.logged().joint(),
                        joint.logged().counted(),
                        joint.posterior().correctionFactor(),
                        evidence),
                next,
                ChargeRulers.of(joint, next.step()),
                joint.logged().tests());
    }
}
