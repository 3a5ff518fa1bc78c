package org.sunder.engine.physics;

import java.math.BigDecimal;
import java.util.List;
import org.sunder.engine.physics.cavity.CavitySegment.Cylinder;
import org.sunder.engine.physics.cavity.CavitySegment.NoseCavity;
import org.sunder.engine.physics.cavity.Content.Fabric;
import org.sunder.engine.physics.cavity.Content.Intrusion;
import org.sunder.engine.physics.cavity.FabricMaterial;
import org.sunder.engine.physics.cavity.TangentOgive;
import org.sunder.engine.physics.charge.JointSetup;
import org.sunder.engine.physics.charge.Limit;
import org.sunder.engine.physics.charge.Powder;
import org.sunder.engine.physics.retention.Fit;
import org.sunder.engine.physics.retention.PinSet;
import org.sunder.engine.physics.retention.PinThread;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.ForceUnit;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.MassUnit;
import org.sunder.engine.quantity.Pressure;
import org.sunder.engine.quantity.PressureUnit;

/** Setups that the tests share. */
public final class Setups {

    private Setups() {}

    public static Length mm(double value) {
        return new Length(BigDecimal.valueOf(value), LengthUnit.MILLIMETRE);
    }

    public static Length inches(double value) {
        return new Length(BigDecimal.valueOf(value), LengthUnit.INCH);
    }

    public static Mass grams(double value) {
        return new Mass(BigDecimal.valueOf(value), MassUnit.GRAM);
    }

    public static Force newtons(double value) {
        return new Force(BigDecimal.valueOf(value), ForceUnit.NEWTON);
    }

    public static Pressure kPa(double value) {
        return new Pressure(BigDecimal.valueOf(value), PressureUnit.KILOPASCAL);
    }

    /** The nose of a 98 mm rocket, held by three M2.5 pins, with the main parachute in it. */
    public static JointSetup bittern() {
        return new JointSetup(
                mm(92),
                List.of(new NoseCavity(new TangentOgive(), mm(92), mm(620), mm(40))),
                List.of(
                        new Intrusion("bay pushed in", mm(45), mm(92)),
                        new Fabric("main parachute", FabricMaterial.NYLON, grams(340), null),
                        new Fabric("harness", FabricMaterial.ARAMID, grams(120), null)),
                List.of(PinSet.ofNylon(PinThread.M2_5, 3)),
                Fit.of(newtons(15)),
                Powder.FINE_BLACK_POWDER,
                mm(45),
                grams(900),
                grams(4100),
                new Limit.GaugePressureLimit(kPa(300)));
    }

    /** An empty tube of that inner diameter and length held by friction alone. */
    public static JointSetup tube(double diameter, double length, double fit) {
        return tube(diameter, length, List.of(), Fit.of(newtons(fit)));
    }

    public static JointSetup tube(double diameter, double length, List<PinSet> pins, Fit fit) {
        return new JointSetup(
                mm(diameter),
                List.of(new Cylinder(mm(diameter), mm(length))),
                List.of(),
                pins,
                fit,
                Powder.FINE_BLACK_POWDER,
                null,
                null,
                null,
                null);
    }
}
