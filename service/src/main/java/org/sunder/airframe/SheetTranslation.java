package org.sunder.airframe;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.engine.physics.SetupFault;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.cavity.CavitySegment;
import org.sunder.engine.physics.cavity.Cone;
import org.sunder.engine.physics.cavity.Content;
import org.sunder.engine.physics.cavity.Ellipsoid;
import org.sunder.engine.physics.cavity.FabricMaterial;
import org.sunder.engine.physics.cavity.HaackSeries;
import org.sunder.engine.physics.cavity.NoseProfile;
import org.sunder.engine.physics.cavity.ParabolicSeries;
import org.sunder.engine.physics.cavity.Paraboloid;
import org.sunder.engine.physics.cavity.PowerSeries;
import org.sunder.engine.physics.cavity.SecantOgive;
import org.sunder.engine.physics.cavity.TangentOgive;
import org.sunder.engine.physics.charge.JointSetup;
import org.sunder.engine.physics.charge.Limit;
import org.sunder.engine.physics.charge.Powder;
import org.sunder.engine.physics.retention.Fit;
import org.sunder.engine.physics.retention.PinSet;
import org.sunder.engine.physics.retention.PinStrength;
import org.sunder.engine.physics.retention.PinThread;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.ForceUnit;

/**
 * From what a flyer describes to the engine's values. Parts may be translated one by one; what a kind needs and lacks is
 * gathered and named by {@link #throwIfAny}.
 */
public final class SheetTranslation {

    private final List<SetupFault> faults = new ArrayList<>();

    /**
     * A whole setup.
     *
     * @throws UnsoundSetupException where a kind lacks what it needs
     */
    public static JointSetup translate(SetupSheet sheet) {
        return new SheetTranslation().setup(sheet);
    }

    /** Where in a sheet stands what the engine calls by another name. */
    public static String pathInSheet(String enginePath) {
        return switch (enginePath) {
            case "limit.pressure" -> "ceiling.gaugePressure";
            case "limit.speed" -> "ceiling.separationSpeed";
            case "fit.force" -> "fitForce";
            case "fit.uncertainty" -> "fitForceUncertainty";
            default -> enginePath.replace(".strength.", ".measured.");
        };
    }

    /** Segments of a cavity; those that lack something are left out and noted. */
    public List<CavitySegment> cavity(List<CavitySheet> segments) {
        return each("cavity", segments, this::segment);
    }

    /** Contents of a compartment; those that lack something are left out and noted. */
    public List<Content> contents(List<ContentSheet> contents) {
        return each("contents", contents, this::content);
    }

    /** Sets of pins; those of unknown thread are left out and noted. */
    public List<PinSet> pins(List<PinSheet> pins) {
        return each("pins", pins, this::pins);
    }

    /** The fit; none where no force is given. */
    public static Fit fit(@Nullable Force force, @Nullable Force uncertainty) {
        return new Fit(force == null ? new Force(BigDecimal.ZERO, ForceUnit.NEWTON) : force, uncertainty);
    }

    /**
     * Ends a translation.
     *
     * @throws UnsoundSetupException with everything noted
     */
    public void throwIfAny() {
        if (!faults.isEmpty()) {
            throw new UnsoundSetupException(faults);
        }
    }

    private JointSetup setup(SetupSheet sheet) {
        List<CavitySegment> cavity = cavity(sheet.cavity());
        List<Content> contents = contents(sheet.contents());
        List<PinSet> pins = pins(sheet.pins());
        Powder powder = powder(sheet);
        checkMeasure(sheet);
        throwIfAny();
        return new JointSetup(
                sheet.innerDiameter(),
                cavity,
                contents,
                pins,
                fit(sheet.fitForce(), sheet.fitForceUncertainty()),
                powder,
                sheet.shoulder(),
                sheet.forwardMass(),
                sheet.aftMass(),
                limit(sheet));
    }

    private static <S, T> List<T> each(String path, List<S> sheets, BiFunction<String, S, @Nullable T> translate) {
        List<T> translated = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) {
            T value = translate.apply(path + "[" + i + "]", sheets.get(i));
            if (value != null) {
                translated.add(value);
            }
        }
        return translated;
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

    private Powder powder(SetupSheet sheet) {
        String name = sheet.powder();
        Powder standard = Powder.FINE_BLACK_POWDER;
        if (name == null || name.equals(standard.name())) {
            return standard;
        }
        if (sheet.powderForce() == null || sheet.powderUncertainty() == null) {
            faults.add(
                    new SetupFault("powder", name, "unknown powder", standard.name() + ", or a powder of the stock"));
            return standard;
        }
        return new Powder(name, sheet.powderForce(), sheet.powderUncertainty().doubleValue());
    }

    private void checkMeasure(SetupSheet sheet) {
        if (!SetupBounds.MEASURE.contains(Measure.of(sheet).kilograms())) {
            String value = Measure.of(sheet).value() + " " + Measure.of(sheet).unit();
            faults.add(new SetupFault("measure", value, "out of bounds", SetupBounds.MEASURE.text()));
        }
    }

    private static @Nullable Limit limit(SetupSheet sheet) {
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
