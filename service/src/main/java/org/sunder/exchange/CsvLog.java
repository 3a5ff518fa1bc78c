package org.sunder.exchange;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.sunder.advice.History;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Joint;
import org.sunder.airframe.Setup;
import org.sunder.engine.quantity.Speed;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.GroundTests;
import org.sunder.groundtest.Report;

/** The log as a table for a spreadsheet. */
@Service
class CsvLog {

    private static final List<String> FIRED = List.of(
            "occasion",
            "charge",
            "chargeUnit",
            "outcome",
            "damaged",
            "speed",
            "speedUnit",
            "speedUncertaintyPercent",
            "containment",
            "counted",
            "loggedBy",
            "finding");

    private final Airframes airframes;
    private final GroundTests tests;
    private final History history;

    CsvLog(Airframes airframes, GroundTests tests, History history) {
        this.airframes = airframes;
        this.tests = tests;
        this.history = history;
    }

    /** Every firing of the flyer, oldest first. */
    @Transactional(readOnly = true)
    public String tests(boolean raw) {
        Map<UUID, Airframe> frames =
                airframes.all().stream().collect(Collectors.toMap(Airframe::id, airframe -> airframe));
        Map<UUID, Joint> joints = airframes.allJoints().stream().collect(Collectors.toMap(Joint::id, joint -> joint));
        Csv csv = new Csv(raw);
        csv.line(joined(List.of(
                List.of("id", "airframe", "joint", "setupRevision"),
                FIRED,
                List.of("firedAt", "receivedAt", "notes"))));
        for (GroundTest test : tests.all()) {
            Joint joint = joints.get(test.jointId());
            Airframe airframe = joint == null ? null : frames.get(joint.airframeId());
            csv.line(joined(List.of(
                    row(
                            test.id(),
                            airframe == null ? null : airframe.name(),
                            joint == null ? null : joint.name(),
                            test.setupRevision()),
                    fired(test),
                    row(
                            test.report().firedAt(),
                            test.receivedAt(),
                            test.report().notes()))));
        }
        return csv.toString();
    }

    /** Everything that happened to an airframe, oldest first. */
    @Transactional(readOnly = true)
    public String history(UUID airframe, boolean raw) {
        Csv csv = new Csv(raw);
        csv.line(joined(List.of(
                List.of("at", "kind", "joint", "setupRevision"),
                FIRED,
                List.of("factorLow", "factorMedian", "factorHigh", "notes", "reason"))));
        for (History.Entry entry : history.of(airframe)) {
            Joint joint = entry.joint();
            Setup setup = entry.setup();
            GroundTest test = entry.test();
            csv.line(joined(List.of(
                    row(
                            test == null || entry.mark() != null
                                    ? entry.at()
                                    : test.report().firedAt(),
                            entry.kind(),
                            joint == null ? null : joint.name(),
                            setup == null ? null : setup.revision()),
                    test == null ? row(new Object[FIRED.size()]) : fired(test),
                    test == null ? row(null, null, null, null) : learned(test),
                    row(entry.mark() == null ? null : entry.mark().reason()))));
        }
        return csv.toString();
    }

    private static List<@Nullable Object> fired(GroundTest test) {
        Report report = test.report();
        Speed speed = report.speed();
        BigDecimal percent = report.speedUncertaintyPercent();
        return row(
                test.occasion(),
                report.charge().value().toPlainString(),
                report.charge().unit().symbol(),
                report.outcome(),
                report.damaged(),
                speed == null ? null : speed.value().toPlainString(),
                speed == null ? null : speed.unit().symbol(),
                percent == null ? null : percent.toPlainString(),
                report.containment(),
                test.counted(),
                test.loggedBy(),
                test.finding());
    }

    private static List<@Nullable Object> learned(GroundTest test) {
        var after = test.correctionAfter();
        return row(after.low(), after.median(), after.high(), test.report().notes());
    }

    private static List<@Nullable Object> row(@Nullable Object... cells) {
        return Arrays.asList(cells);
    }

    private static List<@Nullable Object> joined(List<? extends List<? extends @Nullable Object>> parts) {
        List<@Nullable Object> all = new ArrayList<>();
        for (List<? extends @Nullable Object> part : parts) {
            all.addAll(part);
        }
        return all;
    }
}
