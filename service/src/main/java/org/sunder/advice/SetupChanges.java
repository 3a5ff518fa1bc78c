package org.sunder.advice;

import java.util.List;
import org.sunder.airframe.ContentSheet;
import org.sunder.airframe.Display;
import org.sunder.airframe.PinSheet;
import org.sunder.airframe.SetupSheet;
import org.sunder.airframe.UnitSystem;
import org.sunder.engine.physics.retention.PinSet;
import org.sunder.engine.planning.SetupChange;

/** What a change makes of a setup as a flyer describes it. */
final class SetupChanges {

    private SetupChanges() {}

    /**
     * The setup with the change made.
     *
     * @param from the setup that the change was found for
     * @param units that a volume to fill is written in
     */
    static SetupSheet made(SetupChange change, SetupSheet from, UnitSystem units) {
        return switch (change.kind()) {
            case FEWER_PINS, SMALLER_PINS ->
                from.withPins(
                        change.pins().stream().map(pins -> pins(pins, from)).toList());
            case LESS_VOLUME ->
                from.with(new ContentSheet(
                        "filler",
                        ContentSheet.Kind.SOLID,
                        null,
                        null,
                        null,
                        new Display(units).volume(change.filler()),
                        null,
                        null,
                        null));
            case FINER_MEASURE -> change.measure() == null ? from : from.withMeasure(change.measure());
        };
    }

    /** Pins of the same thread stay of the batch that they were of. */
    private static PinSheet pins(PinSet pins, SetupSheet from) {
        String thread = pins.thread().toString();
        List<PinSheet> before =
                from.pins().stream().filter(set -> set.thread().equals(thread)).toList();
        return before.isEmpty()
                ? new PinSheet(thread, pins.count(), null, null)
                : new PinSheet(
                        thread,
                        pins.count(),
                        before.get(0).batch(),
                        before.get(0).measured());
    }
}
