package org.sunder.advice;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toMap;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.sunder.access.CurrentFlyer;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Joint;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupPhysics;
import org.sunder.groundtest.Films;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.GroundTests;
import org.sunder.persistence.FleetVersions;
import org.sunder.pool.FlyerLogs;
import org.sunder.pool.PoolUse;

/** Reads the fleet of the flyer whose request it is: once for each version of it. */
@Component
class FleetSnapshots implements FlyerLogs {

    private final Airframes airframes;
    private final GroundTests tests;
    private final SetupPhysics physics;
    private final FleetVersions versions;
    private final Findings findings;
    private final PoolUse pool;
    private final Films films;
    private final CurrentFlyer flyer;
    private final TransactionTemplate reading;

    FleetSnapshots(
            Airframes airframes,
            GroundTests tests,
            SetupPhysics physics,
            FleetVersions versions,
            Findings findings,
            PoolUse pool,
            Films films,
            CurrentFlyer flyer,
            PlatformTransactionManager transactions) {
        this.airframes = airframes;
        this.tests = tests;
        this.physics = physics;
        this.versions = versions;
        this.findings = findings;
        this.pool = pool;
        this.films = films;
        this.flyer = flyer;
        this.reading = new TransactionTemplate(transactions);
        this.reading.setReadOnly(true);
    }

    /** The fleet as it stands. */
    FleetSnapshot current() {
        UUID id = flyer.id();
        FleetSnapshot known = findings.latest(id);
        return known != null && known.version() == versions.of(id) ? known : read();
    }

    /** The fleet as it stands, read anew. */
    FleetSnapshot read() {
        FleetSnapshot read = unkept();
        findings.keep(read);
        return read;
    }

    private FleetSnapshot unkept() {
        UUID id = flyer.id();
        while (true) {
            long version = versions.of(id);
            FleetSnapshot read = Objects.requireNonNull(reading.execute(status -> read(id, version)));
            // Rows read one table after another are of one version only if it stands before and after.
            if (versions.of(id) == version) {
                return read;
            }
        }
    }

    /** The log of a flyer who shares it, with nothing kept: all of them are read one after another. */
    @Override
    public Versioned of(UUID sharer) {
        FleetSnapshot read = flyer.reading(sharer, this::unkept);
        return new Versioned(read.version(), read.log());
    }

    private FleetSnapshot read(UUID id, long version) {
        Map<UUID, List<GroundTest>> byJoint = tests.all().stream().collect(groupingBy(GroundTest::jointId));
        Map<UUID, List<Setup>> setups = airframes.allSetups().stream().collect(groupingBy(Setup::jointId));
        List<Airframe> all = airframes.all();
        Map<UUID, Airframe> byId = all.stream().collect(toMap(Airframe::id, Function.identity()));
        Map<UUID, List<LoggedJoint>> joints = airframes.allJoints().stream()
                .filter(joint -> byId.containsKey(joint.airframeId()))
                .map(joint -> logged(
                        Objects.requireNonNull(byId.get(joint.airframeId())),
                        joint,
                        setups.getOrDefault(joint.id(), List.of()),
                        byJoint.getOrDefault(joint.id(), List.of())))
                .collect(groupingBy(joint -> joint.joint().airframeId()));
        return FleetSnapshot.of(id, version, pool.prior(id), films.of(id), all, joints);
    }

    private LoggedJoint logged(Airframe airframe, Joint joint, List<Setup> setups, List<GroundTest> fired) {
        return new LoggedJoint(
                airframe, joint, setups, setups.stream().map(physics::find).toList(), new ArrayList<>(fired));
    }
}
