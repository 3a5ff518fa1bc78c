package org.sunder.page;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Display;
import org.sunder.airframe.InstalledLoadOut;
import org.sunder.airframe.JointFit;
import org.sunder.airframe.Measure;
import org.sunder.engine.physics.packing.ItemFit;

/**
 * A load-out with what it does to each compartment that it fills, in words.
 *
 * @param compartments one a joint
 */
record LoadOutStory(
        UUID id,
        String name,
        @Nullable String motorCase,
        @Nullable String note,
        List<Filled> compartments) {

    /**
     * One compartment with the load-out in it.
     *
     * @param verdict whether it fits
     * @param left what is left, or what is missing
     * @param charge what it does to the handbook charge
     */
    record Filled(String joint, boolean fits, String verdict, String left, String charge) {}

    static LoadOutStory of(InstalledLoadOut loadOut, List<JointFit> fits, Display display) {
        List<Filled> filled = new ArrayList<>();
        for (JointFit joint : fits) {
            joint.loadOuts().stream()
                    .filter(packed -> packed.loadOut().id().equals(loadOut.id()))
                    .forEach(packed -> filled.add(filled(joint, packed, display)));
        }
        return new LoadOutStory(
                loadOut.id(),
                loadOut.sheet().name(),
                loadOut.sheet().motorCase(),
                loadOut.sheet().note(),
                filled);
    }

    private static Filled filled(JointFit joint, JointFit.Packed packed, Display display) {
        var fit = packed.fit();
        List<String> wrong = fit.items().stream()
                .filter(item -> !item.fits())
                .map(ItemFit::name)
                .toList();
        String verdict =
                fit.fits() ? "Fits" : "Does not fit" + (wrong.isEmpty() ? "" : ": " + String.join(", ", wrong));
        String left = (fit.lengthLeft() < 0
                        ? "It is " + display.depth(-fit.lengthLeft()) + " too long"
                        : display.depth(fit.lengthLeft()) + " of length are left")
                + (fit.volumeLeft() < 0
                        ? ", and " + Words.brief(display.volume(-fit.volumeLeft())) + " too large"
                        : ", and " + Words.brief(display.volume(fit.volumeLeft())) + " of volume");
        return new Filled(joint.joint().name(), fit.fits(), verdict, left, charge(joint, packed, display));
    }

    private static String charge(JointFit joint, JointFit.Packed packed, Display display) {
        var measure = Measure.of(joint.setup().sheet());
        String before = Words.of(Display.near(packed.now().handbookCharge(), measure));
        return packed.then()
                .map(then -> "Free volume " + Words.brief(display.volume(then.freeVolume())) + ", handbook charge "
                        + Words.of(Display.near(then.handbookCharge(), measure)) + " (" + before
                        + " in the setup in force)")
                .orElse("No gas volume is left with it.");
    }
}
