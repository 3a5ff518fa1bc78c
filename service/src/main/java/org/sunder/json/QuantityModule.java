package org.sunder.json;

import java.math.BigDecimal;
import java.util.function.BiFunction;
import org.sunder.engine.quantity.Acceleration;
import org.sunder.engine.quantity.AccelerationUnit;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.ForceUnit;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.MassUnit;
import org.sunder.engine.quantity.Pressure;
import org.sunder.engine.quantity.PressureUnit;
import org.sunder.engine.quantity.Quantity;
import org.sunder.engine.quantity.SpecificEnergy;
import org.sunder.engine.quantity.SpecificEnergyUnit;
import org.sunder.engine.quantity.Speed;
import org.sunder.engine.quantity.SpeedUnit;
import org.sunder.engine.quantity.Temperature;
import org.sunder.engine.quantity.TemperatureUnit;
import org.sunder.engine.quantity.Unit;
import org.sunder.engine.quantity.Volume;
import org.sunder.engine.quantity.VolumeUnit;
import tools.jackson.databind.module.SimpleModule;

/** JSON of every quantity. */
final class QuantityModule extends SimpleModule {

    QuantityModule(FaultSink sink) {
        super("quantities");
        read(Length.class, LengthUnit.class, Length::new, sink);
        read(Mass.class, MassUnit.class, Mass::new, sink);
        read(Force.class, ForceUnit.class, Force::new, sink);
        read(Pressure.class, PressureUnit.class, Pressure::new, sink);
        read(Volume.class, VolumeUnit.class, Volume::new, sink);
        read(Speed.class, SpeedUnit.class, Speed::new, sink);
        read(Temperature.class, TemperatureUnit.class, Temperature::new, sink);
        read(Acceleration.class, AccelerationUnit.class, Acceleration::new, sink);
        read(SpecificEnergy.class, SpecificEnergyUnit.class, SpecificEnergy::new, sink);
    }

    private <U extends Enum<U> & Unit, Q extends Quantity<U>> void read(
            Class<Q> type, Class<U> units, BiFunction<BigDecimal, U, Q> maker, FaultSink sink) {
        addDeserializer(type, new QuantityReader<>(units, maker, sink));
    }
}
