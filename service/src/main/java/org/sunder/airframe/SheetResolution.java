package org.sunder.airframe;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.sunder.airframe.PinSheet.PullTests;
import org.sunder.engine.physics.SetupFault;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.retention.PinStrength.MeasuredBatch;
import org.sunder.engine.quantity.Quantity;
import org.sunder.engine.quantity.SpecificEnergy;
import org.sunder.stock.PinBatch;
import org.sunder.stock.PinBatches;
import org.sunder.stock.PowderDetails;
import org.sunder.stock.Powders;
import org.sunder.stock.StockPowder;

/**
 * Puts into a sheet what the stock says of the powder and the pin batches it names, so that the revision holds by itself and
 * a later change of the stock does not reach it. Values that a client repeats must be those of the stock: a sheet never
 * passes off another strength under a batch's name.
 */
@Component
public class SheetResolution {

    private final Powders powders;
    private final PinBatches batches;

    SheetResolution(Powders powders, PinBatches batches) {
        this.powders = powders;
        this.batches = batches;
    }

    /**
     * The sheet with powder and pins filled in.
     *
     * @throws UnsoundSetupException naming each powder and batch that is not there or not as repeated
     */
    public SetupSheet resolve(SetupSheet sheet) {
        return resolve(sheet, Optional.empty());
    }

    /**
     * The sheet with powder and pins filled in.
     *
     * @param inForce the joint's sheet so far, whose values may be repeated although the stock says otherwise by now
     * @throws UnsoundSetupException naming each powder and batch that is not there or not as repeated
     */
    public SetupSheet resolve(SetupSheet sheet, SetupSheet inForce) {
        return resolve(sheet, Optional.of(inForce));
    }

    private SetupSheet resolve(SetupSheet sheet, Optional<SetupSheet> inForce) {
        List<SetupFault> faults = new ArrayList<>();
        List<PinSheet> pins = pins(sheet.pins(), inForce.map(SetupSheet::pins).orElse(List.of()), faults);
        StockPowder powder = powder(sheet, inForce, faults);
        if (!faults.isEmpty()) {
            throw new UnsoundSetupException(faults);
        }
        if (powder == null || powder.standard()) {
            return sheet.resolved(null, null, pins);
        }
        PowderDetails details = powder.details();
        return sheet.resolved(details.powderForce(), details.relativeUncertainty(), pins);
    }

    /**
     * Pins with their batches filled in.
     *
     * @throws UnsoundSetupException naming each batch that is not there or not as repeated
     */
    public List<PinSheet> resolve(List<PinSheet> pins) {
        List<SetupFault> faults = new ArrayList<>();
        List<PinSheet> resolved = pins(pins, List.of(), faults);
        if (!faults.isEmpty()) {
            throw new UnsoundSetupException(faults);
        }
        return resolved;
    }

    private @Nullable StockPowder powder(SetupSheet sheet, Optional<SetupSheet> inForce, List<SetupFault> faults) {
        String name = sheet.powder();
        StockPowder powder =
                name == null ? StockPowder.STANDARD : powders.find(name).orElse(null);
        if (powder == null) {
            String allowed = StockPowder.STANDARD.details().name() + ", or the name of a powder in stock";
            faults.add(new SetupFault("powder", String.valueOf(name), "no such powder in stock", allowed));
            return null;
        }
        Optional<SetupSheet> before = inForce.filter(last -> Objects.equals(last.powder(), name));
        SpecificEnergy force = sheet.powderForce();
        SpecificEnergy own = powder.details().powderForce();
        if (force != null
                && !equal(force, own)
                && before.map(SetupSheet::powderForce)
                        .filter(last -> equal(force, last))
                        .isEmpty()) {
            faults.add(repeated("powderForce", force.value() + " " + force.unit(), own.value() + " " + own.unit()));
        }
        BigDecimal uncertainty = sheet.powderUncertainty();
        BigDecimal ownUncertainty = powder.details().relativeUncertainty();
        if (uncertainty != null
                && uncertainty.compareTo(ownUncertainty) != 0
                && before.map(SetupSheet::powderUncertainty)
                        .filter(last -> uncertainty.compareTo(last) == 0)
                        .isEmpty()) {
            faults.add(repeated("powderUncertainty", uncertainty.toString(), ownUncertainty.toString()));
        }
        return powder;
    }

    private List<PinSheet> pins(List<PinSheet> pins, List<PinSheet> inForce, List<SetupFault> faults) {
        List<PinSheet> resolved = new ArrayList<>();
        for (int i = 0; i < pins.size(); i++) {
            PinSheet pin = pins.get(i);
            PullTests measured = pin.batch() == null
                    ? pin.measured()
                    : measured("pins[" + i + "]", pin, pin.batch(), inForce, faults);
            resolved.add(new PinSheet(pin.thread(), pin.count(), pin.batch(), measured));
        }
        return resolved;
    }

    private @Nullable PullTests measured(
            String path, PinSheet pin, UUID id, List<PinSheet> inForce, List<SetupFault> faults) {
        PinBatch batch = batches.find(id).orElse(null);
        String fault = fault(batch, pin.thread());
        if (batch == null || fault != null) {
            String allowed = "a batch in use, of this thread, with at least " + PinBatch.FEWEST + " pull tests";
            faults.add(new SetupFault(path + ".batch", id.toString(), String.valueOf(fault), allowed));
            return null;
        }
        MeasuredBatch strength = batch.strength().orElseThrow();
        PullTests own = new PullTests(strength.mean(), strength.standardDeviation(), strength.tests());
        boolean known = inForce.stream()
                .filter(last -> id.equals(last.batch()))
                .anyMatch(last -> equal(pin.measured(), last.measured()));
        if (pin.measured() != null && !equal(pin.measured(), own) && !known) {
            String found = own.mean().value() + " " + own.mean().unit() + " from " + own.tests() + " tests";
            faults.add(repeated(
                    path + ".measured",
                    pin.measured().mean().value() + " " + pin.measured().mean().unit(),
                    found));
        }
        return own;
    }

    private static @Nullable String fault(@Nullable PinBatch batch, String thread) {
        if (batch == null) {
            return "no such pin batch";
        }
        if (batch.archivedAt() != null) {
            return "this batch is archived";
        }
        if (!batch.details().thread().toString().equals(thread)) {
            return "this batch is of thread " + batch.details().thread();
        }
        return batch.strength().isEmpty() ? "this batch has too few pull tests" : null;
    }

    /**
     * A sheet as a call stores it: what the stock says is filled in.
     *
     * @throws UnsoundSetupException naming what is not
     */
    static SetupSheet checkedAsStored(SetupSheet sheet) {
        List<SetupFault> faults = new ArrayList<>();
        for (int i = 0; i < sheet.pins().size(); i++) {
            PinSheet pin = sheet.pins().get(i);
            if (pin.batch() != null && pin.measured() == null) {
                faults.add(new SetupFault("pins[" + i + "].measured", "", "needed where a batch is named", "a value"));
            }
        }
        boolean standard = sheet.powder() == null
                || sheet.powder().equals(StockPowder.STANDARD.details().name());
        if (standard && (sheet.powderForce() != null || sheet.powderUncertainty() != null)) {
            String path = sheet.powderForce() == null ? "powderUncertainty" : "powderForce";
            faults.add(new SetupFault(path, "", "the standard powder has its own", "none"));
        }
        if (!faults.isEmpty()) {
            throw new UnsoundSetupException(faults);
        }
        return sheet;
    }

    /**
     * A batch that is there and of the thread of the pins that name it.
     *
     * @throws UnsoundSetupException where it is not
     */
    PinBatch checkedBatch(SetupPhysics.NamedBatch named) {
        return batches.find(named.batch())
                .filter(batch -> batch.details().thread().toString().equals(named.thread()))
                .orElseThrow(() -> new UnsoundSetupException(List.of(new SetupFault(
                        named.path() + ".batch",
                        named.batch().toString(),
                        "no such pin batch of this thread",
                        "a batch of this thread"))));
    }

    private static boolean equal(Quantity<?> a, Quantity<?> b) {
        return a.exactSi().compareTo(b.exactSi()) == 0;
    }

    private static boolean equal(@Nullable PullTests a, @Nullable PullTests b) {
        return a != null
                && b != null
                && equal(a.mean(), b.mean())
                && equal(a.standardDeviation(), b.standardDeviation())
                && a.tests().equals(b.tests());
    }

    private static SetupFault repeated(String path, String value, String own) {
        return new SetupFault(path, value, "not what the stock says; leave it out, and it is filled in", own);
    }
}
