package org.sunder.airframe;

import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.Length;

/** What a flyer says about an airframe and may change. */
public record AirframeDetails(
        String name,
        UnitSystem units,
        @Nullable Length outerDiameter,
        @Nullable String notes) {}
