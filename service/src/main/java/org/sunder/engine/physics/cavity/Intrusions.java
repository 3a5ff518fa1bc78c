package org.sunder.engine.physics.cavity;

import java.util.List;
import org.sunder.engine.physics.cavity.Content.Intrusion;

/** The volume that bays and couplers on the axis take together, each measured from the joint plane, overlaps counted once. */
final class Intrusions {

    private Intrusions() {}

    /** Volume in cubic metres of the union, station by station. */
    static double volume(Cavity cavity, List<Intrusion> intrusions) {
        List<Double> ends = intrusions.stream()
                .map(i -> i.depth().metres())
                .distinct()
                .sorted()
                .toList();
        double volume = 0;
        double from = 0;
        for (double to : ends) {
            volume += cavity.volumeWithin(from, to, widestReaching(intrusions, to));
            from = to;
        }
        return volume;
    }

    private static double widestReaching(List<Intrusion> intrusions, double depth) {
        return intrusions.stream()
                .filter(i -> i.depth().metres() >= depth)
                .mapToDouble(i -> i.diameter().metres() / 2)
                .max()
                .orElse(0);
    }
}
