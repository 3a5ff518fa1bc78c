package org.sunder.engine.physics.charge;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.physics.cavity.Content;
import org.sunder.engine.physics.cavity.FreeVolume;
import org.sunder.engine.physics.cavity.Passage;
import org.sunder.engine.physics.retention.PinStrength;

/**
 * What a person should know about a setup. Codes: no-structural-limit, default-ceiling, ceiling-at-domain,
 * ceiling-below-handbook, no-shoulder, short-shoulder, no-masses, no-pins, handbook-pin-strength, guessed-fit, crowded,
 * little-free, wider-than-cavity, area-unlike-cavity, too-little-work.
 */
final class Warnings {

    private static final double CROWDED = 0.25; // free part of the cavity under which small errors weigh, own choice

    private static final double LITTLE = 0.05; // free part under which the inputs leave no charge, own choice

    private static final double UNLIKE = 0.15; // relative difference of diameters worth a question, own choice

    private final List<Warning> found = new ArrayList<>();

    private Warnings() {}

    static List<Warning> of(
            JointSetup setup,
            FreeVolume volume,
            double handbookCharge,
            Ceiling ceiling,
            Optional<Separation> separation) {
        Warnings warnings = new Warnings();
        warnings.limits(setup, handbookCharge, ceiling);
        warnings.shoulder(setup);
        warnings.inputs(setup, volume);
        if (separation.filter(s -> s.speed(handbookCharge) == 0).isPresent()) {
            warnings.add(
                    "too-little-work",
                    "The handbook charge breaks the pins, but its gas is spent before the shoulder is out: "
                            + "the parts may stay together. A shorter shoulder, less friction or more volume helps.");
        }
        return warnings.found;
    }

    private void limits(JointSetup setup, double handbookCharge, Ceiling ceiling) {
        if (!(setup.limit() instanceof Limit.GaugePressureLimit)) {
            add(
                    "no-structural-limit",
                    "No structural limit was given. State the gauge pressure the airframe withstands.");
        }
        if (ceiling.source() == CeilingSource.DEFAULT_THREE_TIMES_THRESHOLD) {
            add("default-ceiling", "The ceiling is three times the threshold pressure, because no limit was given.");
        }
        if (ceiling.source() == CeilingSource.MODEL_DOMAIN) {
            add("ceiling-at-domain", "The ceiling is the largest pressure or charge this model answers for.");
        }
        if (ceiling.chargeKg() < handbookCharge) {
            add(
                    "ceiling-below-handbook",
                    "The ceiling lies below the handbook charge: change the setup (fewer pins, less volume, more area).");
        }
    }

    private void shoulder(JointSetup setup) {
        if (setup.shoulder() == null) {
            add("no-shoulder", "The length of the shoulder is not given, so its engagement cannot be judged.");
        } else if (setup.shoulder().metres() < setup.innerDiameter().metres()) {
            add("short-shoulder", "The shoulder is shorter than one calibre: the joint may bend in flight.");
        }
        if (setup.forwardMass() == null || setup.aftMass() == null) {
            add("no-masses", "Without both masses the separation speed and the load on the harness are not known.");
        }
    }

    private void inputs(JointSetup setup, FreeVolume volume) {
        if (setup.pins().isEmpty()) {
            add("no-pins", "Friction alone holds this joint: it varies with weather and wear.");
        }
        if (setup.pins().stream().anyMatch(p -> p.strength() instanceof PinStrength.MaterialShear)) {
            add(
                    "handbook-pin-strength",
                    "The strength of the pins is a handbook value. Pull tests of the batch replace it.");
        }
        if (setup.fit().uncertainty() == null) {
            add(
                    "guessed-fit",
                    "The fit force is taken as a guess. Pull the joint with a scale and state its uncertainty.");
        }
        double opening = 2 * setup.emptyCavity().openingRadius();
        if (Math.abs(setup.innerDiameter().metres() / opening - 1) > UNLIKE) {
            add(
                    "area-unlike-cavity",
                    "The inner diameter at the joint is not that of the cavity's open end: check both, and their units.");
        }
        setup.contents().stream()
                .filter(Content.Intrusion.class::isInstance)
                .map(Content.Intrusion.class::cast)
                .flatMap(bay -> new Passage(setup.emptyCavity(), bay).warning().stream())
                .forEach(found::add);
        double share = volume.free() / volume.cavity();
        if (share < LITTLE) {
            add(
                    "little-free",
                    "Only " + SetupBounds.rough(1e6 * volume.free()) + " mL of "
                            + SetupBounds.rough(1000 * volume.cavity())
                            + " L are free, " + String.format(Locale.ROOT, "%.1f", 100 * share)
                            + " % of the cavity: no charge can be told from what is packed. Measure again what takes the"
                            + " volume, or pack less.");
        } else if (share < CROWDED) {
            add("crowded", "Little of the cavity is free, so small errors in what is packed change the charge much.");
        }
    }

    private void add(String code, String text) {
        found.add(new Warning(code, text));
    }
}
