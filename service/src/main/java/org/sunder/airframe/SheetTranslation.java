package org.sunder.airframe;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.physics.CavitySegment;
import org.sunder.engine.physics.Cone;
import org.sunder.engine.physics.Content;
import org.sunder.engine.physics.Ellipsoid;
import org.sunder.engine.physics.FabricMaterial;
import org.sunder.engine.physics.Fit;
import org.sunder.engine.physics.HaackSeries;
import org.sunder.engine.physics.JointSetup;
import org.sunder.engine.physics.Limit;
import org.sunder.engine.physics.NoseProfile;
import org.sunder.engine.physics.ParabolicSeries;
import org.sunder.engine.physics.Paraboloid;
import org.sunder.engine.physics.PinSet;
import org.sunder.engine.physics.PinStrength;
import org.sunder.engine.physics.PinThread;
import org.sunder.engine.physics.Powder;
import org.sunder.engine.physics.PowerSeries;
import org.sunder.engine.physics.SecantOgive;
import org.sunder.engine.physics.SetupFault;
import org.sunder.engine.physics.TangentOgive;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.ForceUnit;

/** From a flyer's sheet to the engine's setup; what a kind needs and lacks is named. */
final class SheetTranslation {

    private static final double FINEST_MEASURE = 1e-6; // kg
    private static final double COARSEST_MEASURE = 5e-3; // kg

    private final SetupSheet sheet;
    private final List<SetupFault> faults = new ArrayList<>();

    private SheetTranslation(SetupSheet sheet) {
        this.sheet = sheet;
    }

    /**
     * Translates.
     *
     * @throws UnsoundSetupException where a kind lacks what it needs
     */
    static JointSetup translate(SetupSheet sheet) {
        return new SheetTranslation(sheet).setup();
    }

    /** Where in a sheet stands what the engine calls by another name. */
    static String pathInSheet(String enginePath) {
        return switch (enginePath) {
            case "limit.pressure" -> "ceiling.gaugePressure";
            case "limit.speed" -> "ceiling.separationSpeed";
            case "fit.force" -> "fitForce";
            case "fit.uncertainty" -> "fitForceUncertainty";
            default -> enginePath.replace(".strength.", ".measured.");
        };
    }

    private JointSetup setup() {
        List<CavitySegment> cavity = new ArrayList<>();
        for (int i = 0; i < sheet.cavity().size(); i++) {
            CavitySegment segment = segment("cavity[" + i + "]", sheet.cavity().get(i));
            if (segment != null) {
                cavity.add(segment);
            }
        }
        List<Content> contents = new ArrayList<>();
        for (int i = 0; i < sheet.contents().size(); i++) {
            Content content = content("contents[" + i + "]", sheet.contents().get(i));
            if (content != null) {
                contents.add(content);
            }
        }
        List<PinSet> pins = new ArrayList<>();
        for (int i = 0; i < sheet.pins().size(); i++) {
            PinSet set = pins("pins[" + i + "]", sheet.pins().get(i));
            if (set != null) {
                pins.add(set);
            }
        }
        Powder powder = powder();
        checkMeasure();
        if (!faults.isEmpty()) {
            throw new UnsoundSetupException(faults);
        }
        return new JointSetup(
                sheet.innerDiameter(),
                cavity,
                contents,
                pins,
                fit(),
                powder,
                sheet.shoulder(),
                sheet.forwardMass(),
                sheet.aftMass(),
                limit());
    }

    private @Nullable CavitySegment segment(String path, CavitySheet segment) {
        if (segment.kind() == CavitySheet.Kind.CYLINDER) {
            var diameter = needed(path + ".innerDiameter", segment.innerDiameter(), "a cylinder");
            return diameter == null ? null : new CavitySegment.Cylinder(diameter, segment.length());
        }
        var base = needed(path + ".baseDiameter", segment.baseDiameter(), "a nose");
        var sheetProfile = needed(path + ".profile", segment.profile(), "a nose");
        NoseProfile profile = sheetProfile == null ? null : profile(path + ".profile", sheetProfile);
        return base == null || profile == null
                ? null
                : new CavitySegment.NoseCavity(profile, base, segment.length(), segment.tipCutoff());
    }

    private @Nullable NoseProfile profile(String path, ProfileSheet profile) {
        return switch (profile.shape()) {
            case CONE -> new Cone();
            case TANGENT_OGIVE -> new TangentOgive();
            case ELLIPSOID -> new Ellipsoid();
            case PARABOLOID -> new Paraboloid();
            case SECANT_OGIVE -> {
                var radius = needed(path + ".radius", profile.radius(), "a secant ogive");
                yield radius == null ? null : new SecantOgive(radius);
            }
            case POWER_SERIES -> {
                BigDecimal n = needed(path + ".parameter", profile.parameter(), "a power series");
                yield n == null ? null : new PowerSeries(n.doubleValue());
            }
            case HAACK_SERIES -> {
                BigDecimal c = needed(path + ".parameter", profile.parameter(), "a Haack series");
                yield c == null ? null : new HaackSeries(c.doubleValue());
            }
            case PARABOLIC_SERIES -> {
                BigDecimal k = needed(path + ".parameter", profile.parameter(), "a parabolic series");
                yield k == null ? null : new ParabolicSeries(k.doubleValue());
            }
        };
    }

    private @Nullable Content content(String path, ContentSheet content) {
        return switch (content.kind()) {
            case INTRUSION -> {
                var depth = needed(path + ".depth", content.depth(), "an intrusion");
                var diameter = needed(path + ".diameter", content.diameter(), "an intrusion");
                yield depth == null || diameter == null ? null : new Content.Intrusion(content.name(), depth, diameter);
            }
            case SOLID -> solid(path, content);
            case FABRIC -> {
                var material = needed(path + ".material", content.material(), "fabric");
                var mass = needed(path + ".mass", content.mass(), "fabric");
                yield material == null || mass == null
                        ? null
                        : new Content.Fabric(
                                content.name(),
                                FabricMaterial.valueOf(material.name()),
                                mass,
                                content.envelopeVolume());
            }
        };
    }

    private @Nullable Content solid(String path, ContentSheet content) {
        if (content.volume() != null) {
            return new Content.Solid(content.name(), content.volume());
        }
        var diameter = needed(path + ".diameter", content.diameter(), "a solid without a volume");
        var length = needed(path + ".length", content.length(), "a solid without a volume");
        return diameter == null || length == null ? null : Content.Solid.ofEnvelope(content.name(), diameter, length);
    }

    private @Nullable PinSet pins(String path, PinSheet pins) {
        PinThread thread = PinThread.find(pins.thread()).orElse(null);
        if (thread == null) {
            String allowed = String.join(
                    ", ", PinThread.all().stream().map(PinThread::toString).toList());
            faults.add(new SetupFault(path + ".thread", pins.thread(), "unknown thread", allowed));
            return null;
        }
        PinSheet.PullTests measured = pins.measured();
        PinStrength strength = measured == null
                ? PinStrength.MaterialShear.NYLON_66
                : new PinStrength.MeasuredBatch(measured.mean(), measured.standardDeviation(), measured.tests());
        return new PinSet(thread, pins.count(), strength);
    }

    private Powder powder() {
        String name = sheet.powder();
        Powder standard = Powder.FINE_BLACK_POWDER;
        if (name != null && !name.equals(standard.name())) {
            faults.add(new SetupFault("powder", name, "unknown powder", standard.name()));
        }
        return standard;
    }

    private void checkMeasure() {
        double step = Measure.of(sheet).kilograms();
        if (step < FINEST_MEASURE || step > COARSEST_MEASURE) {
            String value = Measure.of(sheet).value() + " " + Measure.of(sheet).unit();
            faults.add(new SetupFault("measure", value, "out of bounds", "0.001 g to 5 g"));
        }
    }

    private Fit fit() {
        Force force = sheet.fitForce();
        return new Fit(
                force == null ? new Force(BigDecimal.ZERO, ForceUnit.NEWTON) : force, sheet.fitForceUncertainty());
    }

    private @Nullable Limit limit() {
        CeilingSheet ceiling = sheet.ceiling();
        if (ceiling == null) {
            return null;
        }
        if (ceiling.gaugePressure() != null) {
            return new Limit.GaugePressureLimit(ceiling.gaugePressure());
        }
        return ceiling.separationSpeed() == null ? null : new Limit.SeparationSpeedLimit(ceiling.separationSpeed());
    }

    private <T> @Nullable T needed(String path, @Nullable T value, String by) {
        if (value == null) {
            faults.add(new SetupFault(path, "", "needed for " + by, "a value"));
        }
        return value;
    }
}
