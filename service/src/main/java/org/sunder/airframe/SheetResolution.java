package org.sunder.airframe;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.sunder.airframe.PinSheet.PullTests;
import org.sunder.engine.physics.PinStrength.MeasuredBatch;
import org.sunder.engine.physics.SetupFault;
import org.sunder.engine.physics.UnsoundSetupException;
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
        List<SetupFault> faults = new ArrayList<>();
        List<PinSheet> pins = pins(sheet.pins(), faults);
        StockPowder powder = powder(sheet, faults);
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
        List<PinSheet> resolved = pins(pins, faults);
        if (!faults.isEmpty()) {
            throw new UnsoundSetupException(faults);
        }
        return resolved;
    }

    private @Nullable StockPowder powder(SetupSheet sheet, List<SetupFault> faults) {
        String name = sheet.powder();
        StockPowder powder =
                name == null ? StockPowder.STANDARD : powders.find(name).orElse(null);
        if (powder == null) {
            String allowed = StockPowder.STANDARD.details().name() + ", or the name of a powder in stock";
            faults.add(new SetupFault("powder", String.valueOf(name), "no such powder in stock", allowed));
            return null;
        }
        SpecificEnergy force = sheet.powderForce();
        SpecificEnergy own = powder.details().powderForce();
        if (force != null && force.exactSi().compareTo(own.exactSi()) != 0) {
            faults.add(repeated("powderForce", force.value() + " " + force.unit(), own.value() + " " + own.unit()));
        }
        BigDecimal uncertainty = sheet.powderUncertainty();
        BigDecimal ownUncertainty = powder.details().relativeUncertainty();
        if (uncertainty != null && uncertainty.compareTo(ownUncertainty) != 0) {
            faults.add(repeated("powderUncertainty", uncertainty.toString(), ownUncertainty.toString()));
        }
        return powder;
    }

    private List<PinSheet> pins(List<PinSheet> pins, List<SetupFault> faults) {
        List<PinSheet> resolved = new ArrayList<>();
        for (int i = 0; i < pins.size(); i++) {
            PinSheet pin = pins.get(i);
            PullTests measured =
                    pin.batch() == null ? pin.measured() : measured("pins[" + i + "]", pin, pin.batch(), faults);
            resolved.add(new PinSheet(pin.thread(), pin.count(), pin.batch(), measured));
        }
        return resolved;
    }

    private @Nullable PullTests measured(String path, PinSheet pin, UUID id, List<SetupFault> faults) {
        PinBatch batch = batches.find(id).orElse(null);
        String fault = fault(batch, pin.thread());
        if (batch == null || fault != null) {
            String allowed = "a batch in use, of this thread, with at least " + PinBatch.FEWEST + " pull tests";
            faults.add(new SetupFault(path + ".batch", id.toString(), String.valueOf(fault), allowed));
            return null;
        }
        MeasuredBatch strength = batch.strength().orElseThrow();
        PullTests own = new PullTests(strength.mean(), strength.standardDeviation(), strength.tests());
        if (pin.measured() != null && !pin.measured().equals(own)) {
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

    private static SetupFault repeated(String path, String value, String own) {
        return new SetupFault(path, value, "not what the stock says; leave it out, and it is filled in", own);
    }
}
