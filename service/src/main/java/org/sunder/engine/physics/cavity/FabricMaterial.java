package org.sunder.engine.physics.cavity;

/** Fibres of parachutes and harness; densities from memory of polymer handbooks. */
public enum FabricMaterial {
    NYLON("nylon", 1140),
    ARAMID("aramid", 1440),
    POLYESTER("polyester", 1380);

    private final String word;
    private final double density;

    FabricMaterial(String word, double density) {
        this.word = word;
        this.density = density;
    }

    /** Density of the fibre in kilograms per cubic metre. */
    public double density() {
        return density;
    }

    @Override
    public String toString() {
        return word;
    }
}
