package org.sunder.advice;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Setup;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.posterior.FleetModel;
import org.sunder.engine.learning.posterior.NewSetups;
import org.sunder.groundtest.GroundTest;
import org.sunder.pool.PoolPrior;
import org.sunder.problem.ProblemException;

/**
 * A flyer's fleet as it stood at one version, read once: everything that is learned and advised follows from it. Immutable.
 * Airframes and joints stand in the order of their ids, so that the same log gives the same answer to the last bit.
 */
final class FleetSnapshot {

    private final UUID flyer;
    private final long version;
    private final Optional<PoolPrior> pool;
    private final Optional<BigDecimal> films;
    private final Map<UUID, Airframe> airframes;
    private final Map<UUID, LoggedJoint> joints;
    private final Map<UUID, Position> positions;
    private final FleetLog log;
    private final FleetLog example;

    /** Where a joint stands in the log that it belongs to: indices of its airframe, and of the joint in it. */
    private record Position(int airframe, int joint) {}

    private FleetSnapshot(
            UUID flyer,
            long version,
            Optional<PoolPrior> pool,
            Optional<BigDecimal> films,
            Map<UUID, Airframe> airframes,
            Map<UUID, LoggedJoint> joints,
            Map<UUID, Position> positions,
            FleetLog log,
            FleetLog example) {
        this.flyer = flyer;
        this.version = version;
        this.pool = pool;
        this.films = films;
        this.airframes = airframes;
        this.joints = joints;
        this.positions = positions;
        this.log = log;
        this.example = example;
    }

    /**
     * The fleet at a version.
     *
     * @param pool what its answers start from, where others were learned from
     * @param films how good the speeds of the flyer's films are, in percent, where every firing is filmed
     * @param airframes in order of id, archived ones too: what they taught still counts
     * @param joints of each airframe in order of id
     */
    static FleetSnapshot of(
            UUID flyer,
            long version,
            Optional<PoolPrior> pool,
            Optional<BigDecimal> films,
            Collection<Airframe> airframes,
            Map<UUID, List<LoggedJoint>> joints) {
        Map<UUID, Airframe> byId = new LinkedHashMap<>();
        Map<UUID, LoggedJoint> all = new LinkedHashMap<>();
        Map<UUID, Position> positions = new LinkedHashMap<>();
        List<AirframeLog> logs = new ArrayList<>();
        List<AirframeLog> invented = new ArrayList<>();
        for (Airframe airframe : airframes) {
            byId.put(airframe.id(), airframe);
            List<LoggedJoint> own = joints.getOrDefault(airframe.id(), List.of());
            List<AirframeLog> into = airframe.example() ? invented : logs;
            for (int i = 0; i < own.size(); i++) {
                positions.put(own.get(i).joint().id(), new Position(into.size(), i));
                all.put(own.get(i).joint().id(), own.get(i));
            }
            into.add(new AirframeLog(own.stream().map(LoggedJoint::log).toList()));
        }
        return new FleetSnapshot(
                flyer, version, pool, films, byId, all, positions, new FleetLog(logs), new FleetLog(invented));
    }

    UUID flyer() {
        return flyer;
    }

    long version() {
        return version;
    }

    /** What its answers start from, where others were learned from. */
    Optional<PoolPrior> pool() {
        return pool;
    }

    /** How good the speeds of the flyer's films are, in percent; empty where nothing is said of films. */
    Optional<BigDecimal> films() {
        return films;
    }

    /** What is believed before any test of it. */
    Priors priors() {
        return pool.map(PoolPrior::priors).orElseGet(Priors::standard);
    }

    /** Everything that the engine learns from; nothing of the example is in it. */
    FleetLog log() {
        return log;
    }

    /** What is invented: the example learns from itself alone. */
    FleetLog example() {
        return example;
    }

    /** Whether a setup is one of the example. */
    boolean ofExample(Setup setup) {
        return joint(setup.jointId()).airframe().example();
    }

    /** Every airframe in order of id, archived ones too. */
    Collection<Airframe> airframes() {
        return airframes.values();
    }

    /** Every joint, airframe by airframe, in order of id. */
    Collection<LoggedJoint> joints() {
        return joints.values();
    }

    /**
     * A joint.
     *
     * @throws ProblemException 404 where the flyer has none of that id
     */
    LoggedJoint joint(UUID id) {
        LoggedJoint joint = joints.get(id);
        if (joint == null) {
            throw ProblemException.notFound("joint", id);
        }
        return joint;
    }

    /**
     * A test.
     *
     * @throws ProblemException 404 where the flyer has none of that id
     */
    GroundTest test(UUID id) {
        return joints.values().stream()
                .flatMap(joint -> joint.tests().stream())
                .filter(test -> test.id().equals(id))
                .findFirst()
                .orElseThrow(() -> ProblemException.notFound("ground test", id));
    }

    /** Where a setup stands in the log that it belongs to. */
    Leaf leaf(Setup setup) {
        Position position = Objects.requireNonNull(positions.get(setup.jointId()));
        return new Leaf.Logged(
                position.airframe(), position.joint(), joint(setup.jointId()).place(setup));
    }

    /** What a model of this fleet says of setups new to a joint. */
    NewSetups newSetups(FleetModel model, UUID joint) {
        Position position = Objects.requireNonNull(positions.get(joint));
        return model.newSetups(position.airframe(), position.joint());
    }

    /** How many tests of all joints are in the fit. */
    int counted() {
        return counted(false);
    }

    /** The same of the example, or of all that is real. */
    int counted(boolean ofExample) {
        return joints.values().stream()
                .filter(joint -> joint.airframe().example() == ofExample)
                .mapToInt(LoggedJoint::counted)
                .sum();
    }

    /** How many other airframes have tests in the fit of an airframe. */
    int testedAirframesBut(UUID airframe) {
        boolean ofExample = airframe.equals(Airframe.EXAMPLE);
        return (int) joints.values().stream()
                .filter(joint -> joint.counted() > 0 && joint.airframe().example() == ofExample)
                .map(joint -> joint.airframe().id())
                .filter(id -> !id.equals(airframe))
                .distinct()
                .count();
    }

    /** The fleet of the next version: with one more test, or with a test as it stands now. */
    FleetSnapshot with(GroundTest test) {
        LoggedJoint changed = joint(test.jointId()).with(test);
        Map<UUID, LoggedJoint> next = new LinkedHashMap<>(joints);
        next.put(test.jointId(), changed);
        Position position = Objects.requireNonNull(positions.get(test.jointId()));
        boolean ofExample = changed.airframe().example();
        FleetLog before = ofExample ? example : log;
        FleetLog after = before.with(
                position.airframe(), before.airframes().get(position.airframe()).with(position.joint(), changed.log()));
        return new FleetSnapshot(
                flyer,
                version + 1,
                pool,
                films,
                airframes,
                next,
                positions,
                ofExample ? log : after,
                ofExample ? after : example);
    }
}
