package org.sunder.page;

import java.util.ArrayList;
import java.util.List;
import org.sunder.airframe.Display;
import org.sunder.engine.physics.packing.ItemFit;
import org.sunder.engine.physics.packing.LoadOutFit;

/** Whether what is packed fits a compartment, and by how much, in words. */
final class FitWords {

    private static final double SLACK = 1e-6; // m, rounding of stated lengths

    private FitWords() {}

    /** "Fits: 25 mm of length and 0.41 L are left." or "Does not fit: motor case is 140 mm too long for this side." */
    static String of(LoadOutFit fit, Display display) {
        return fit.fits()
                ? "Fits: " + display.depth(fit.lengthLeft()) + " of length and "
                        + Words.brief(display.volume(fit.volumeLeft())) + " are left."
                : "Does not fit: " + String.join(" ", wrong(fit, display));
    }

    private static List<String> wrong(LoadOutFit fit, Display display) {
        boolean lengthy = fit.lengthLeft() < -SLACK;
        List<String> wrong = new ArrayList<>();
        if (lengthy) {
            wrong.add(lacking(fit) + display.depth(-fit.lengthLeft()) + " too long for this side.");
        } else {
            fit.items().stream()
                    .filter(item -> !item.fits())
                    .map(item -> item.name() + " is " + display.depth(-2 * item.clearance())
                            + " wider than the place where it comes to lie.")
                    .forEach(wrong::add);
        }
        if (fit.volumeLeft() < 0) {
            wrong.add("All of it takes " + Words.brief(display.volume(-fit.volumeLeft()))
                    + " more than there is room for.");
        }
        return wrong;
    }

    /** What finds no room lengthwise. */
    private static String lacking(LoadOutFit fit) {
        List<String> names = fit.items().stream()
                .filter(item -> !item.fits())
                .map(ItemFit::name)
                .toList();
        return switch (names.size()) {
            case 0 -> "All of it together is ";
            case 1 -> names.get(0) + " is ";
            default ->
                String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1)
                        + " together are ";
        };
    }
}
