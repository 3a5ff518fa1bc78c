package org.sunder.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.context.annotation.Profile;
import org.springframework.core.io.ClassPathResource;
import org.springframework.stereotype.Component;
import org.sunder.advice.Advising;
import org.sunder.advice.Estimates;
import org.sunder.advice.LogDraft;
import org.sunder.advice.TestLogging;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.AirframeDetails;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.DeploymentEvent;
import org.sunder.airframe.Display;
import org.sunder.airframe.Joint;
import org.sunder.airframe.SetupSheet;
import org.sunder.airframe.UnitSystem;
import org.sunder.caution.Caution;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.physics.packing.Containment;
import org.sunder.engine.planning.NextStep;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.MassUnit;
import org.sunder.groundtest.Occasion;
import org.sunder.groundtest.Report;
import org.sunder.json.StoredJson;
import org.sunder.persistence.DurableTransactions;
import org.sunder.web.Cursor;
import org.sunder.web.Page;

/**
 * Three airframes with tests that show evidence building, sufficient, stale and conflicting. The tests follow the advice of
 * the service; what each joint does comes from thresholds invented for the scenario.
 */
@Component
@Profile("demo")
class DemoFleet implements ApplicationRunner {

    private static final Logger LOG = LoggerFactory.getLogger(DemoFleet.class);
    private static final int MOST_TESTS = 12;

    private final Airframes airframes;
    private final TestLogging logging;
    private final Advising advising;
    private final DurableTransactions transactions;

    DemoFleet(Airframes airframes, TestLogging logging, Advising advising, DurableTransactions transactions) {
        this.airframes = airframes;
        this.logging = logging;
        this.advising = advising;
        this.transactions = transactions;
    }

    @Override
    public void run(ApplicationArguments arguments) {
        if (airframes.page(Cursor.NEWEST, 1).isEmpty()) {
            load();
        }
        airframes.page(Cursor.NEWEST, Page.USUAL).forEach(this::tell);
        LOG.info("Mind before any charge: {}", Caution.texts());
    }

    private void tell(Airframe airframe) {
        for (Joint joint : airframes.jointsOf(airframe.id())) {
            var next = advising.next(joint.id());
            String advice = next.step() instanceof NextStep.StateLimit
                    ? "state what the airframe withstands"
                    : "change the setup";
            if (next.step() instanceof NextStep.Fire fire) {
                advice = "fire next on the ground " + words(fire.charge(), next.measure());
            } else if (next.step() instanceof NextStep.Stop stop) {
                advice = "enough is known to fly " + words(stop.flightCharge().charge(), next.measure());
            }
            LOG.info(
                    "{}, {}: {} (evidence {}) /api/joints/{}/next-charge",
                    airframe.name(),
                    joint.name(),
                    advice,
                    next.evidence().evidence(),
                    joint.id());
        }
    }

    private static String words(double kilograms, Mass measure) {
        Mass charge = Display.onMeasure(kilograms, measure);
        return charge.value() + " " + charge.unit();
    }

    private UUID load() {
        UUID dunlin = airframe("Dunlin", UnitSystem.METRIC, "76", "payload tube carries the bay");
        UUID nose = joint(dunlin, "nose to payload tube", DeploymentEvent.MAIN, "dunlin-nose");
        testUntilDone(nose, new Truth("0.86", "0.98"), "2026-03-14T10:00:00+00:00");
        transactions.commit(() -> airframes.changeSetup(nose, version -> {}, sheet("dunlin-nose-changed")));

        UUID whimbrel = airframe("Whimbrel", UnitSystem.US, "102", "flies from a US-customary notebook");
        UUID forward = joint(whimbrel, "nose to booster", DeploymentEvent.MAIN, "whimbrel-nose");
        testUntilDone(forward, new Truth("1.05", "1.20"), "2026-04-11T13:30:00+01:00");
        surprise(forward, "2026-04-12T11:00:00+01:00");

        UUID bittern = airframe("Bittern", UnitSystem.METRIC, "98", "no payload tube: the bay sits in the nose");
        UUID main = joint(bittern, "nose to bay", DeploymentEvent.MAIN, "bittern-nose");
        testUntilDone(main, new Truth("0.72", "0.84"), "2026-05-03T10:20:00+01:00");
        UUID drogue = joint(bittern, "bay to booster", DeploymentEvent.DROGUE, "bittern-booster");
        test(drogue, new Truth("1.10", "1.30"), "2026-05-03T14:00:00+01:00");
        return bittern;
    }

    private UUID airframe(String name, UnitSystem units, String millimetres, String notes) {
        Length diameter = new Length(new BigDecimal(millimetres), LengthUnit.MILLIMETRE);
        AirframeDetails details = new AirframeDetails(name, units, diameter, notes);
        return transactions.commit(() -> airframes.enter(details)).id();
    }

    private UUID joint(UUID airframe, String name, DeploymentEvent event, String setup) {
        return transactions
                .commit(() -> airframes.addJoint(airframe, name, event, sheet(setup)))
                .id();
    }

    private static SetupSheet sheet(String name) {
        try (InputStream file = new ClassPathResource("demo/" + name + ".json").getInputStream()) {
            return StoredJson.mapper().readValue(file, SetupSheet.class);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Charges from which a joint of the scenario parts partially, and fully. */
    private record Truth(BigDecimal partial, BigDecimal full) {

        Truth(String partialGrams, String fullGrams) {
            this(new BigDecimal(partialGrams), new BigDecimal(fullGrams));
        }

        Outcome outcome(Mass charge) {
            BigDecimal grams = charge.valueIn(MassUnit.GRAM);
            if (grams.compareTo(partial) < 0) {
                return Outcome.NONE;
            }
            return grams.compareTo(full) < 0 ? Outcome.PARTIAL : Outcome.SEPARATED;
        }
    }

    private void testUntilDone(UUID joint, Truth truth, String first) {
        OffsetDateTime at = OffsetDateTime.parse(first);
        for (int i = 0;
                i < MOST_TESTS && test(joint, truth, at.plusMinutes(55L * i).toString());
                i++) {
            // each round is one test
        }
    }

    /** Fires what the service advises; false where it advises no test. */
    private boolean test(UUID joint, Truth truth, String at) {
        var next = advising.next(joint);
        if (!(next.step() instanceof NextStep.Fire fire)) {
            return false;
        }
        Mass charge = Display.onMeasure(fire.charge(), next.measure());
        log(joint, charge, truth.outcome(charge), at, "");
        return true;
    }

    /** A shot that should have parted the joint did nothing. */
    private void surprise(UUID joint, String at) {
        var flight = advising.flight(joint, Estimates.TARGET);
        Mass charge = Display.onMeasure(flight.charge().charge(), flight.measure());
        log(joint, charge, Outcome.NONE, at, "pop heard, nothing moved; igniter lead was warm");
    }

    private void log(UUID joint, Mass charge, Outcome outcome, String at, String notes) {
        Report report = new Report(
                charge,
                outcome,
                false,
                null,
                null,
                Containment.VIAL,
                OffsetDateTime.parse(at),
                notes.isEmpty() ? null : notes);
        LogDraft draft = logging.draft(joint, null, Occasion.GROUND, report);
        transactions.run(() -> logging.add(draft));
    }
}
