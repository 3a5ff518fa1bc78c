package org.sunder.engine.physics.flight;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Drills in three series: fractions of an inch by 64ths, number drills #1 to #60, metric by 0.1 mm. */
public final class DrillSizes {

    private static final double INCH = 0.0254; // m, defined

    // #1 to #60 in ten-thousandths of an inch; from memory of ASME B94.11M.
    private static final List<Integer> NUMBERS = List.of(
            2280, 2210, 2130, 2090, 2055, 2040, 2010, 1990, 1960, 1935, 1910, 1890, 1850, 1820, 1800, 1770, 1730, 1695,
            1660, 1610, 1590, 1570, 1540, 1520, 1495, 1470, 1440, 1405, 1360, 1285, 1200, 1160, 1130, 1110, 1100, 1065,
            1040, 1015, 995, 980, 960, 935, 890, 860, 820, 810, 785, 760, 730, 700, 670, 635, 595, 550, 520, 465, 430,
            420, 410, 400);

    private static final List<DrillSize> NUMBERED = numbered();
    private static final List<DrillSize> FRACTIONS = fractions();
    private static final List<DrillSize> METRIC = metric();

    private DrillSizes() {}

    /** The nearest drill of each series, fraction, number, metric, to a diameter in metres. */
    public static List<DrillSize> nearest(double diameter) {
        return List.of(nearest(FRACTIONS, diameter), nearest(NUMBERED, diameter), nearest(METRIC, diameter));
    }

    private static DrillSize nearest(List<DrillSize> series, double diameter) {
        return series.stream()
                .min(Comparator.comparingDouble(d -> Math.abs(d.diameter() - diameter)))
                .orElseThrow();
    }

    private static List<DrillSize> numbered() {
        List<DrillSize> sizes = new ArrayList<>();
        for (int i = 0; i < NUMBERS.size(); i++) {
            sizes.add(new DrillSize("#" + (i + 1), NUMBERS.get(i) * 1e-4 * INCH));
        }
        return List.copyOf(sizes);
    }

    private static List<DrillSize> fractions() {
        List<DrillSize> sizes = new ArrayList<>();
        for (int n = 2; n <= 64; n++) {
            int divisor = Integer.lowestOneBit(n);
            String name = n == 64 ? "1 in" : n / divisor + "/" + 64 / divisor + " in";
            sizes.add(new DrillSize(name, n / 64.0 * INCH));
        }
        return List.copyOf(sizes);
    }

    private static List<DrillSize> metric() {
        List<DrillSize> sizes = new ArrayList<>();
        for (int tenths = 5; tenths <= 250; tenths++) {
            sizes.add(new DrillSize(tenths / 10 + "." + tenths % 10 + " mm", tenths * 1e-4));
        }
        return List.copyOf(sizes);
    }
}
