package org.sunder.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.sunder.airframe.Airframe;
import org.sunder.engine.physics.cavity.CavitySegment;
import org.sunder.engine.physics.cavity.Content;
import org.sunder.engine.physics.cavity.TangentOgive;
import org.sunder.engine.physics.charge.JointSetup;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Mass;
import org.sunder.picture.SideView;
import org.sunder.picture.SideView.Cut;
import org.sunder.picture.SideView.Element;
import org.sunder.picture.SideView.Inside;
import org.sunder.picture.SideView.Kind;
import org.sunder.picture.SideView.Part;
import org.sunder.picture.SideView.Station;
import org.sunder.problem.ProblemException;

/**
 * Puts an airframe together from the setups of its joints. A compartment with a nose lies forward of its joint, any other aft
 * of it. Joints stand in the order of the mass forward of them where all that need it give it, else in the order entered.
 * What no setup describes is put in plain, at a length that is usual.
 */
@Service
public class SideViews {

    private static final double USUAL_RADIUS = 0.05; // m, of an airframe of which nothing is known
    private static final double OUTSIDE = 1.04; // to the inside, where only that is known
    private static final double SAME_BODY =
            1.2; // an outer diameter more than this many times the inner is of another part
    private static final double PLAIN_NOSE = 4; // calibres
    private static final double PLAIN_BAY = 0.6;
    private static final double PLAIN_TAIL = 3.5;
    private static final double PLAIN_BODY = 4;
    private static final int POINTS = 20; // along a nose, the closer the nearer to its tip, where it is bent most

    private final FleetSnapshots fleets;
    private final Standings standings;

    SideViews(FleetSnapshots fleets, Standings standings) {
        this.fleets = fleets;
        this.standings = standings;
    }

    /**
     * An airframe from the side, in use or put away.
     *
     * @throws ProblemException 404 where the flyer has none of that id
     */
    public SideView of(UUID airframeId) {
        return of(fleets.current(), airframeId);
    }

    /** An airframe of a fleet from the side. */
    SideView of(FleetSnapshot fleet, UUID airframeId) {
        Airframe airframe = fleet.airframes().stream()
                .filter(each -> each.id().equals(airframeId))
                .findFirst()
                .orElseThrow(() -> ProblemException.notFound("airframe", airframeId));
        List<Described> joints = fleet.joints().stream()
                .filter(joint -> joint.airframe().id().equals(airframeId))
                .map(joint -> described(fleet, joint))
                .toList();
        return new SideView(airframe.name(), elements(airframe, inOrder(joints)));
    }

    /** A joint with its setup; null where it cannot be read. */
    private record Described(Standing standing, @Nullable JointSetup setup) {

        boolean nose() {
            return setup != null && setup.cavity().get(0) instanceof CavitySegment.NoseCavity;
        }

        @Nullable Double forwardMass() {
            Mass mass = setup == null ? null : setup.forwardMass();
            return mass == null ? null : mass.kilograms();
        }
    }

    private Described described(FleetSnapshot fleet, LoggedJoint logged) {
        Standing standing = standings.standing(fleet, logged);
        return new Described(
                standing,
                logged.finding().isPresent()
                        ? null
                        : logged.physics(logged.setup()).setup());
    }

    private static List<Described> inOrder(List<Described> joints) {
        Comparator<Described> entered = Comparator.comparing(
                (Described joint) -> joint.standing().joint().createdAt());
        boolean weighed = joints.stream().filter(joint -> !joint.nose()).allMatch(joint -> joint.forwardMass() != null);
        Comparator<Described> byMass =
                Comparator.comparing(joint -> Objects.requireNonNullElse(joint.forwardMass(), 0.0));
        Comparator<Described> noseFirst = Comparator.comparing((Described joint) -> !joint.nose());
        return joints.stream()
                .sorted((weighed ? noseFirst.thenComparing(byMass) : noseFirst).thenComparing(entered))
                .toList();
    }

    private static List<Element> elements(Airframe airframe, List<Described> joints) {
        List<Element> elements = new ArrayList<>();
        double radius = joints.isEmpty()
                ? radius(airframe, null)
                : radius(airframe, joints.get(0).setup());
        boolean noseDescribed = !joints.isEmpty() && joints.get(0).nose();
        if (!noseDescribed) {
            elements.add(plainNose(radius));
        }
        boolean aft = false;
        for (int i = 0; i < joints.size(); i++) {
            Described joint = joints.get(i);
            radius = radius(airframe, joint.setup());
            boolean forward = i == 0 && noseDescribed;
            if (i > 0) {
                elements.add(Part.straight(Kind.BAY, PLAIN_BAY * 2 * radius, radius, false));
            }
            if (forward) {
                elements.addAll(nose(Objects.requireNonNull(joint.setup()), radius));
            }
            elements.add(cut(joint, forward));
            if (!forward) {
                elements.add(tube(joint.setup(), radius));
            }
            aft = !forward;
        }
        if (!aft) {
            elements.add(Part.straight(Kind.TUBE, PLAIN_BODY * 2 * radius, radius, false));
        }
        elements.add(Part.straight(Kind.TAIL, PLAIN_TAIL * 2 * radius, radius, false));
        return elements;
    }

    /** Outer radius at a joint. */
    private static double radius(Airframe airframe, @Nullable JointSetup setup) {
        Length diameter = airframe.outerDiameter();
        double outer = diameter == null ? 0 : diameter.metres() / 2;
        if (setup == null) {
            return outer > 0 ? outer : USUAL_RADIUS;
        }
        double inner = setup.innerDiameter().metres() / 2;
        return outer >= inner && outer <= SAME_BODY * inner ? outer : OUTSIDE * inner;
    }

    private static Part plainNose(double radius) {
        double length = PLAIN_NOSE * 2 * radius;
        TangentOgive profile = new TangentOgive();
        return new Part(Kind.NOSE, stations(length, x -> profile.radius(x, radius, length)), false);
    }

    /** A nose from its tip, with the tube behind it as far as the joint. */
    private static List<Part> nose(JointSetup setup, double radius) {
        CavitySegment.NoseCavity nose =
                (CavitySegment.NoseCavity) setup.cavity().get(0);
        double base = nose.baseDiameter().metres() / 2;
        double length = nose.length().metres();
        List<Part> parts = new ArrayList<>();
        parts.add(new Part(
                Kind.NOSE, stations(length, x -> nose.profile().radius(x, base, length) * radius / base), true));
        double rest = span(setup.cavity().subList(1, setup.cavity().size()));
        if (rest > 0) {
            parts.add(Part.straight(Kind.TUBE, rest, radius, true));
        }
        return parts;
    }

    private static Part tube(@Nullable JointSetup setup, double radius) {
        return setup == null
                ? Part.straight(Kind.TUBE, PLAIN_BODY * 2 * radius, radius, false)
                : Part.straight(Kind.TUBE, span(setup.cavity()), radius, true);
    }

    private static double span(List<CavitySegment> segments) {
        return segments.stream().mapToDouble(CavitySegment::span).sum();
    }

    private static List<Station> stations(double length, java.util.function.DoubleUnaryOperator radiusAt) {
        return IntStream.rangeClosed(0, POINTS)
                .mapToDouble(i -> length * i * i / (POINTS * POINTS))
                .mapToObj(x -> new Station(x, radiusAt.applyAsDouble(x)))
                .toList();
    }

    private static Cut cut(Described joint, boolean compartmentForward) {
        return new Cut(
                joint.standing().joint().id().toString(),
                joint.standing().joint().name(),
                joint.standing().evidence().evidence(),
                inside(joint.setup(), compartmentForward),
                false,
                null);
    }

    /** The longest of what is pushed in at the joint, or the shoulder; it belongs to the part without the compartment. */
    private static @Nullable Inside inside(@Nullable JointSetup setup, boolean compartmentForward) {
        if (setup == null) {
            return null;
        }
        Length shoulder = setup.shoulder();
        Inside byShoulder = shoulder == null
                ? null
                : new Inside(shoulder.metres(), setup.innerDiameter().metres() / 2, !compartmentForward);
        return setup.contents().stream()
                .filter(Content.Intrusion.class::isInstance)
                .map(Content.Intrusion.class::cast)
                .max(Comparator.comparing(bay -> bay.depth().metres()))
                .map(bay -> new Inside(bay.depth().metres(), bay.diameter().metres() / 2, !compartmentForward))
                .orElse(byShoulder);
    }
}
