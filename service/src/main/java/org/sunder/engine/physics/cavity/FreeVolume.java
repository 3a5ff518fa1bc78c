package org.sunder.engine.physics.cavity;

import java.util.ArrayList;
import java.util.List;
import org.sunder.engine.physics.Faults;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.cavity.Content.Fabric;
import org.sunder.engine.physics.cavity.Content.Intrusion;
import org.sunder.engine.physics.cavity.Content.Solid;

/**
 * How the free gas volume of a compartment comes about, so that people can check it.
 *
 * @param cavity volume of the empty cavity, m³
 * @param contents what each item takes, in the order listed, m³
 */
public record FreeVolume(double cavity, List<Share> contents) {

    /**
     * What one item takes.
     *
     * @param name the item
     * @param volume m³
     * @param sd standard deviation of that volume, m³
     */
    public record Share(String name, double volume, double sd) {}

    // Relative standard deviations, this project's choices: lengths measured with a rule, fibre density and moisture,
    // envelopes judged by eye.
    private static final double CAVITY_UNCERTAINTY = 0.01;
    private static final double INTRUSION_UNCERTAINTY = 0.02;
    private static final double MATERIAL_UNCERTAINTY = 0.10;
    private static final double ENVELOPE_UNCERTAINTY = 0.15;

    /** Copies the list. */
    public FreeVolume {
        contents = List.copyOf(contents);
    }

    /**
     * The free volume of any compartment, with no joint around it.
     *
     * @param segments the empty cavity, far end first
     * @param contents what is packed in it
     * @throws UnsoundSetupException with every fault; paths {@code cavity} and {@code contents}
     */
    public static FreeVolume ofCompartment(List<CavitySegment> segments, List<Content> contents) {
        Faults faults = new Faults();
        Cavity cavity = new Cavity(segments);
        boolean sound = new SegmentCheck(faults).check(segments);
        new ContentCheck(faults, sound ? cavity : null).check(contents);
        faults.throwIfAny();
        return of(cavity, contents);
    }

    /** Subtracts contents from a cavity; the result may be negative and is then for the caller to refuse. */
    public static FreeVolume of(Cavity cavity, List<Content> contents) {
        List<Share> shares = new ArrayList<>();
        List<Intrusion> pushedIn = new ArrayList<>();
        for (Content content : contents) {
            if (content instanceof Intrusion intrusion) {
                double before = Intrusions.volume(cavity, pushedIn);
                pushedIn.add(intrusion);
                double added = Math.max(0, Intrusions.volume(cavity, pushedIn) - before);
                shares.add(share(intrusion, added, INTRUSION_UNCERTAINTY));
            } else if (content instanceof Solid solid) {
                shares.add(share(solid, solid.volume().cubicMetres(), ENVELOPE_UNCERTAINTY));
            } else if (content instanceof Fabric fabric) {
                shares.add(ofFabric(fabric));
            }
        }
        return new FreeVolume(cavity.volume(), shares);
    }

    private static Share ofFabric(Fabric fabric) {
        return fabric.envelopeVolume() == null
                ? share(fabric, fabric.mass().kilograms() / fabric.material().density(), MATERIAL_UNCERTAINTY)
                : share(fabric, fabric.envelopeVolume().cubicMetres(), ENVELOPE_UNCERTAINTY);
    }

    private static Share share(Content content, double volume, double relative) {
        return new Share(content.name(), volume, relative * volume);
    }

    /** The free gas volume V in cubic metres. */
    public double free() {
        return cavity - contents.stream().mapToDouble(Share::volume).sum();
    }

    /** Standard deviation of the free volume in cubic metres. */
    public double sd() {
        double own = CAVITY_UNCERTAINTY * cavity;
        return Math.sqrt(
                own * own + contents.stream().mapToDouble(s -> s.sd() * s.sd()).sum());
    }
}
