package org.sunder.advice;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.sunder.advice.FieldKit.Extent;
import org.sunder.advice.FieldKit.KitJoint;
import org.sunder.groundtest.GroundTest;

/** Packs what a phone needs to work without network, from one reading of the fleet. */
@Service
public class FieldKits {

    /** Last firings of a joint in the kit. */
    private static final int TESTS = 10;

    private static final Comparator<LoggedJoint> NEWEST = Comparator.comparing(FieldKits::touched)
            .reversed()
            .thenComparing(joint -> joint.joint().id().toString());

    private final FleetSnapshots fleets;
    private final Advising advising;
    private final ChargeRulers rulers;

    FieldKits(FleetSnapshots fleets, Advising advising, ChargeRulers rulers) {
        this.fleets = fleets;
        this.advising = advising;
        this.rulers = rulers;
    }

    /**
     * The kit of the fleet as it stands.
     *
     * @param answer given the kit's tag, and what packs it if the phone has another
     */
    public <T> T now(Extent extent, Function<Ready, T> answer) {
        FleetSnapshot fleet = fleets.current();
        return answer.apply(new Ready(FieldKit.tag(fleet, extent), () -> pack(fleet, extent)));
    }

    /**
     * A kit that may be packed.
     *
     * @param tag changes with anything in it
     * @param packing packs it
     */
    public record Ready(String tag, Supplier<FieldKit> packing) {}

    private FieldKit pack(FleetSnapshot fleet, Extent extent) {
        List<LoggedJoint> all = extent.joint() == null
                ? fleet.joints().stream()
                        .filter(joint -> joint.airframe().archivedAt() == null
                                && joint.finding().isEmpty())
                        .sorted(NEWEST)
                        .toList()
                : List.of(fleet.joint(extent.joint()));
        List<LoggedJoint> packed = all.subList(0, Math.min(extent.most(), all.size()));
        return new FieldKit(
                packed.stream()
                        .map(joint -> joint(fleet, joint, extent.depth()))
                        .toList(),
                all.size() - packed.size(),
                fleet.films().orElse(null));
    }

    private KitJoint joint(FleetSnapshot fleet, LoggedJoint logged, int depth) {
        int count = logged.tests().size();
        List<GroundTest> last = Stream.iterate(count - 1, i -> i >= Math.max(0, count - TESTS), i -> i - 1)
                .map(i -> logged.tests().get(i))
                .toList();
        return new KitJoint(
                logged.airframe(),
                logged.joint(),
                advising.next(fleet, logged.joint().id()),
                depth == 0 ? null : advising.ladder(fleet, logged.joint().id(), depth),
                rulers.of(fleet, logged.joint().id()),
                last,
                logged.physics(logged.setup()).warnings());
    }

    /** When something happened last at a joint. */
    private static Instant touched(LoggedJoint joint) {
        return Stream.concat(
                        Stream.of(joint.setup().createdAt()),
                        joint.tests().stream().map(GroundTest::receivedAt))
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }
}
