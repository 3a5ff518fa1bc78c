package org.sunder.airframe;

import java.math.BigDecimal;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.MassUnit;

/** The step that charges are measured in. */
public final class Measure {

    /** 0.05 g: what a common small scale or dipper can give. */
    public static final Mass USUAL = new Mass(new BigDecimal("0.05"), MassUnit.GRAM);

    private Measure() {}

    /** The step of a sheet. */
    public static Mass of(SetupSheet sheet) {
        Mass measure = sheet.measure();
        return measure == null ? USUAL : measure;
    }
}
