package org.sunder.advice;

import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Joint;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupPhysics;
import org.sunder.airframe.SetupSheet;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.planning.EvidenceReport;
import org.sunder.engine.planning.SetupChange;

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
        JointAnswer before = readable ? overviews.answer(fleet, logged) : null;
        if (before != null && resolved.describesAs(logged.setup().sheet())) {
            return new TriedChange(before, before, logged.setup(), false);
        }
        Setup setup = new Setup(
                UUID.randomUUID(), jointId, logged.joint().currentRevision() + 1, resolved, clock.instant(), null);
        return new TriedChange(before, answer(fleet, logged, setup), setup, true);
    }

    /**
     * A setup that can be looked at beside another.
     *
     * @param inForce whether it is in force at its joint
     */
    public record Candidate(Airframe airframe, Joint joint, Setup setup, boolean inForce) {}

    /**
     * The setups of a joint, newest first, then those in force at the other joints in use, by the names of their airframes; only
     * what can be.
     *
     * @throws org.sunder.problem.ProblemException 404 where there is no such joint
     */
    public List<Candidate> candidates(UUID jointId) {
        FleetSnapshot fleet = fleets.current();
        LoggedJoint own = fleet.joint(jointId);
        Stream<Candidate> ofItself = own.setups().stream()
                .sorted(Comparator.comparingInt(Setup::revision).reversed())
                .flatMap(setup -> candidate(own, setup));
        Stream<Candidate> ofOthers = fleet.joints().stream()
                .filter(other ->
                        !other.joint().id().equals(jointId) && other.airframe().archivedAt() == null)
                .sorted(Comparator.comparing(other -> other.airframe().name()))
                .flatMap(other -> candidate(other, other.setup()));
        return Stream.concat(ofItself, ofOthers).toList();
    }

    /**
     * A way on that the answer for a joint names, to be tried.
     *
     * @param change what changes
     * @param sheet the setup that it makes of the one in force
     */
    public record WayOn(SetupChange change, SetupSheet sheet) {}

    /**
     * The ways on that the answer for a joint names, in its order; none where a charge will do.
     *
     * @throws org.sunder.problem.ProblemException 404 where there is no such joint
     */
    public List<WayOn> waysOn(UUID jointId) {
        FleetSnapshot fleet = fleets.current();
        LoggedJoint logged = fleet.joint(jointId);
        NextAdvice next = overviews.answer(fleet, logged).next();
        return next == null
                ? List.of()
                : next.changes().stream()
                        .map(change -> new WayOn(
                                change, SetupChanges.made(change, logged.setup().sheet(), next.units())))
                        .toList();
    }

    private static Stream<Candidate> candidate(LoggedJoint of, Setup setup) {
        return of.stored(setup).finding().isPresent()
                ? Stream.empty()
                : Stream.of(new Candidate(of.airframe(), of.joint(), setup, setup.equals(of.setup())));
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
