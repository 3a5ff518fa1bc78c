package org.sunder.engine.physics.retention;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.sunder.engine.physics.Solids;

/**
 * Screw threads used as shear pins. Inch sizes: ASME B1.1, root diameter D − 1.299038/n and tensile stress area π/4·(D −
 * 0.9743/n)². Metric coarse sizes: ISO 898-1, root diameter d − 1.226869·P and stress area π/4·(d − 0.938194·P)². The two
 * constants differ by convention and must not be swapped.
 */
public enum PinThread {
    UNC_2_56("#2-56", 0.0860, 56),
    UNF_2_64("#2-64", 0.0860, 64),
    UNC_4_40("#4-40", 0.1120, 40),
    UNF_4_48("#4-48", 0.1120, 48),
    UNC_6_32("#6-32", 0.1380, 32),
    UNF_6_40("#6-40", 0.1380, 40),
    UNC_8_32("#8-32", 0.1640, 32),
    UNF_8_36("#8-36", 0.1640, 36),
    UNC_10_24("#10-24", 0.1900, 24),
    UNF_10_32("#10-32", 0.1900, 32),
    UNC_1_4_20("1/4-20", 0.2500, 20),
    UNF_1_4_28("1/4-28", 0.2500, 28),
    M2("M2", 0.40),
    M2_5("M2.5", 0.45),
    M3("M3", 0.50),
    M4("M4", 0.70),
    M5("M5", 0.80);

    private final String symbol;
    private final double majorDiameter;
    private final double pitch;
    private final double stressOffset;
    private final double rootOffset;

    PinThread(String symbol, double majorInches, int perInch) {
        this.symbol = symbol;
        this.majorDiameter = majorInches * 0.0254;
        this.pitch = 0.0254 / perInch;
        this.stressOffset = 0.9743;
        this.rootOffset = 1.299038;
    }

    PinThread(String symbol, double pitchMillimetres) {
        this.symbol = symbol;
        this.majorDiameter = Double.parseDouble(symbol.substring(1)) * 0.001;
        this.pitch = pitchMillimetres * 0.001;
        this.stressOffset = 0.938194;
        this.rootOffset = 1.226869;
    }

    /** The thread with that symbol, e.g. {@code #2-56} or {@code M2.5}. */
    public static Optional<PinThread> find(String symbol) {
        return Arrays.stream(values()).filter(t -> t.symbol.equals(symbol)).findFirst();
    }

    /** Every thread, inch sizes first. */
    public static List<PinThread> all() {
        return List.of(values());
    }

    /** Whether it is of the metric family. */
    public boolean isMetric() {
        return symbol.startsWith("M");
    }

    /** Nominal outer diameter in metres. */
    public double majorDiameter() {
        return majorDiameter;
    }

    /** Root diameter of the external thread in metres. */
    public double rootDiameter() {
        return majorDiameter - rootOffset * pitch;
    }

    /** Area in square metres at the root: the conservative shear plane. */
    public double rootArea() {
        return Solids.disc(rootDiameter());
    }

    /** Tensile stress area in square metres. */
    public double tensileStressArea() {
        return Solids.disc(majorDiameter - stressOffset * pitch);
    }

    /** The symbol, e.g. {@code #2-56}. */
    @Override
    public String toString() {
        return symbol;
    }
}
