package org.sunder.exchange;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.sunder.airframe.AirframeDetails;
import org.sunder.airframe.AirframeRequest;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.JointRequest;
import org.sunder.airframe.LoadOutSheet;
import org.sunder.airframe.LoadOuts;
import org.sunder.airframe.SetupPhysics;
import org.sunder.airframe.SetupSheet;
import org.sunder.airframe.UnitSystem;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.physics.packing.Containment;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.ForceUnit;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.MassUnit;
import org.sunder.engine.quantity.SpecificEnergy;
import org.sunder.engine.quantity.SpecificEnergyUnit;
import org.sunder.engine.quantity.Speed;
import org.sunder.engine.quantity.SpeedUnit;
import org.sunder.engine.quantity.Unit;
import org.sunder.groundtest.ReasonRequest;
import org.sunder.groundtest.Report;
import org.sunder.groundtest.ReportRules;
import org.sunder.persistence.QuantityColumns;
import org.sunder.problem.ProblemException;
import org.sunder.problem.StrictReading;
import org.sunder.stock.PinBatchRequest;
import org.sunder.stock.PinBatches;
import org.sunder.stock.PowderDetails;
import org.sunder.stock.PowderRequest;
import org.sunder.stock.Powders;
import org.sunder.stock.StockPowder;

/** The rules of the calls for rows that come in otherwise: each row goes through what its call goes through. */
@Component
class RowRules {

    /** Fields that a call has in one and a row in two. */
    private static final Map<String, String> IN_ROW = Map.of(
            "/powderForce", "/forceValue",
            "/outerDiameter", "/outerDiameterValue",
            "/charge", "/chargeValue",
            "/speed", "/speedValue",
            "/force", "/forceValue");

    private final StrictReading reading;
    private final SetupPhysics physics;
    private final LoadOuts loadOuts;
    private final Clock clock;

    RowRules(StrictReading reading, SetupPhysics physics, LoadOuts loadOuts, Clock clock) {
        this.reading = reading;
        this.physics = physics;
        this.loadOuts = loadOuts;
        this.clock = clock;
    }

    /** What can only be said when all rows are there: load-outs by their id, with the pointers of their rows. */
    static final class Later {
        private final Map<UUID, String> loadOuts = new HashMap<>();
        private final Map<SetupPhysics.NamedBatch, String> batches = new HashMap<>();
    }

    /**
     * Refuses, by throwing, a row that its call would refuse.
     *
     * @param at JSON pointer of the row
     * @param later takes what must wait for other rows
     */
    void check(String at, Row row, Later later) {
        try {
            switch (row.table().name()) {
                case "powder" -> powder(row);
                case "pin_batch" -> texts(PinBatchRequest.class, row, "name", "lot", "note");
                case "pull_test" ->
                    quantity(row, "force", ForceUnit.class, Force::new).ifPresent(PinBatches::checkForce);
                case "airframe" -> airframe(row);
                case "joint" -> texts(JointRequest.class, row, "name");
                case "ground_test" -> test(row);
                case "ground_test_void" -> texts(ReasonRequest.class, row, "reason");
                case "setup" -> setup(row, at, later);
                case "load_out" -> {
                    inDocument(() -> reading.read(row.text("document"), LoadOutSheet.class));
                    later.loadOuts.put(row.id(), at);
                }
                default ->
                    throw new IllegalStateException(
                            "no rules for " + row.table().name());
            }
        } catch (ProblemException e) {
            throw e.at(pointer -> at + IN_ROW.getOrDefault(pointer, pointer));
        }
    }

    /** Refuses, by throwing, what waited for other rows. */
    void check(Later later) {
        later.batches.forEach((named, at) -> refuseAt(at, () -> physics.checkBatch(named)));
        later.loadOuts.forEach((id, at) -> refuseAt(at + "/document", () -> loadOuts.checkStored(id)));
    }

    private void powder(Row row) {
        texts(PowderRequest.class, row, "name", "lot", "granulation", "note");
        BigDecimal uncertainty = new BigDecimal(row.text("relative_uncertainty"));
        reading.check(PowderRequest.class, "relativeUncertainty", uncertainty);
        String name = row.text("name");
        quantity(row, "force", SpecificEnergyUnit.class, SpecificEnergy::new)
                .ifPresent(force -> Powders.checkValues(new PowderDetails(name, null, null, force, uncertainty, null)));
        if (row.id().equals(StockPowder.STANDARD.id())) {
            throw ProblemException.invalid("/id", row.id(), "this is the id of the standard powder", "another id");
        }
        String inUse = row.find("archived_at") == null ? name : null;
        if (!Objects.equals(inUse, row.find("name_in_use"))) {
            throw ProblemException.invalid(
                    "/nameInUse",
                    String.valueOf(row.find("name_in_use")),
                    "the name in use is the name of the powder, and none once it is archived",
                    String.valueOf(inUse));
        }
    }

    private void airframe(Row row) {
        texts(AirframeRequest.class, row, "name", "notes");
        Length diameter =
                quantity(row, "outer_diameter", LengthUnit.class, Length::new).orElse(null);
        Airframes.check(new AirframeDetails(row.text("name"), UnitSystem.METRIC, diameter, null));
    }

    private void setup(Row row, String at, Later later) {
        SetupSheet sheet = inDocument(() -> reading.read(row.text("document"), SetupSheet.class));
        inDocument(() -> {
            physics.checkStored(sheet);
            return sheet;
        });
        SetupPhysics.batchesOf(sheet).forEach(named -> later.batches.putIfAbsent(named, at + "/document"));
    }

    private void test(Row row) {
        Instant received = row.time("received_at");
        Instant latest = clock.instant().plus(ReportRules.CLOCKS_DISAGREE);
        if (received.isAfter(latest)) {
            throw ProblemException.invalid("/receivedAt", received, "this time lies in the future", "a time up to now");
        }
        String containment = row.find("containment") instanceof String word ? word : null;
        int offset = (Integer) row.get("fired_offset_seconds");
        Report report = new Report(
                quantity(row, "charge", MassUnit.class, Mass::new).orElseThrow(),
                Outcome.valueOf(row.text("outcome")),
                (Boolean) row.get("damaged"),
                quantity(row, "speed", SpeedUnit.class, Speed::new).orElse(null),
                row.find("speed_uncertainty_percent") instanceof String percent ? new BigDecimal(percent) : null,
                containment == null ? null : Containment.valueOf(containment),
                row.time("fired_at").atOffset(ZoneOffset.ofTotalSeconds(offset)),
                row.find("notes") instanceof String notes ? notes : null);
        ReportRules.checked(report, received);
    }

    /** A quantity of two columns, of which there are both or none. */
    private static <U extends Enum<U> & Unit, Q> Optional<Q> quantity(
            Row row, String column, Class<U> units, BiFunction<BigDecimal, U, Q> maker) {
        String value = (String) row.find(column + "_value");
        String unit = (String) row.find(column + "_unit");
        Optional<Q> quantity = QuantityColumns.find(value, unit, units, maker);
        if (quantity.isEmpty() && (value != null || unit != null)) {
            throw ProblemException.invalid(
                    "/" + Column.needed(column + "_value", Form.ID).field(),
                    value + " " + unit,
                    "a value and its unit belong together",
                    "both or neither");
        }
        return quantity;
    }

    private void texts(Class<?> call, Row row, String... columns) {
        Arrays.stream(columns).forEach(column -> reading.check(call, column, row.find(column)));
    }

    private static <T> T inDocument(Supplier<T> work) {
        try {
            return work.get();
        } catch (ProblemException e) {
            throw e.at(pointer -> "/document" + pointer);
        }
    }

    private static void refuseAt(String at, Runnable work) {
        try {
            work.run();
        } catch (ProblemException e) {
            throw e.at(pointer -> at + pointer);
        }
    }

    /**
     * A row as read.
     *
     * @param table its table
     * @param values in the order of the table's columns, as the database keeps them
     */
    record Row(Table table, List<@Nullable Object> values) {

        @Nullable Object find(String column) {
            return values.get(table.place(column));
        }

        Object get(String column) {
            return Objects.requireNonNull(find(column));
        }

        String text(String column) {
            return (String) get(column);
        }

        UUID id() {
            return (UUID) get("id");
        }

        Instant time(String column) {
            return ((OffsetDateTime) get(column)).toInstant();
        }
    }
}
