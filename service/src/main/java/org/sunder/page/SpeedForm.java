package org.sunder.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.Loads;
import org.sunder.advice.NextAdvice;
import org.sunder.airframe.UnitSystem;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.quantity.Length;

/** What a flyer says of the harness between the parts. */
final class SpeedForm extends TypedForm {

    private final @Nullable Length stretch;

    SpeedForm(UnitSystem units, Map<String, String> typed) {
        super(units, typed);
        this.stretch = part("stretch");
    }

    /** Speeds, and the load of the harness where its stretch is typed and can be; empty where the setup tells no speed. */
    Optional<SpeedSheet> answer(NextAdvice next, List<Loads.Parting> measured) {
        try {
            return SpeedSheet.of(next, measured, stretch, display());
        } catch (UnsoundSetupException e) {
            faulty(e, path -> "stretch");
            return SpeedSheet.of(next, measured, null, display());
        }
    }
}
