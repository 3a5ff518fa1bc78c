package org.sunder.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Display;
import org.sunder.airframe.InstalledLoadOut;
import org.sunder.airframe.JointFit;
import org.sunder.airframe.LoadOutSheet.CompartmentSheet;
import org.sunder.airframe.Measure;
import org.sunder.engine.physics.packing.ItemFit;

/**
 * A load-out with what it does to each compartment that it fills, in words and drawn.
 *
 * @param fits whether it fits all of them
 * @param compartments one a joint, the worst first
 */
record LoadOutStory(
        UUID id,
        String name,
        @Nullable String motorCase,
        @Nullable String note,
        boolean fits,
        List<Filled> compartments) {

    /**
     * One compartment with the load-out in it.
     *
     * @param verdict whether it fits, and by how much
     * @param items everything in it, as numbered in the picture
     * @param charge what it does to the handbook charge; none is named for what does not fit
     * @param picture drawn for some widths, all compartments of an airframe to one scale
     */
    record Filled(
            String joint,
            boolean fits,
            String verdict,
            List<Item> items,
            String charge,
            Map<Integer, String> picture) {}

    /** Something packed, and where it lies. */
    record Item(String name, String where, boolean fits) {}

    private record Case(InstalledLoadOut loadOut, JointFit joint, JointFit.Packed packed, CompartmentSheet sheet) {}

    /** The load-outs of an airframe, worst first: what does not fit, then the least length left. */
    static List<LoadOutStory> of(List<InstalledLoadOut> loadOuts, List<JointFit> fits, Display display) {
        List<Case> cases = fits.stream()
                .flatMap(joint -> joint.loadOuts().stream().flatMap(packed -> found(joint, packed).stream()))
                .sorted(WORST_FIRST)
                .toList();
        Optional<LoadOutPicture.Extent> extent = cases.stream()
                .map(each -> LoadOutPicture.Extent.of(each.packed(), each.sheet()))
                .reduce(LoadOutPicture.Extent::and);
        List<UUID> order =
                cases.stream().map(each -> each.loadOut().id()).distinct().toList();
        return loadOuts.stream()
                .sorted(Comparator.comparingInt(
                        loadOut -> order.contains(loadOut.id()) ? order.indexOf(loadOut.id()) : order.size()))
                .map(loadOut -> {
                    List<Filled> filled = new ArrayList<>();
                    extent.ifPresent(scale -> cases.stream()
                            .filter(each -> each.loadOut().id().equals(loadOut.id()))
                            .forEach(each -> filled.add(filled(each, scale, display))));
                    return new LoadOutStory(
                            loadOut.id(),
                            loadOut.sheet().name(),
                            loadOut.sheet().motorCase(),
                            loadOut.sheet().note(),
                            filled.stream().allMatch(Filled::fits),
                            filled);
                })
                .toList();
    }

    private static final Comparator<Case> WORST_FIRST = Comparator.<Case, Boolean>comparing(
                    each -> each.packed().fit().fits())
            .thenComparingDouble(each -> each.packed().fit().lengthLeft());

    private static Optional<Case> found(JointFit joint, JointFit.Packed packed) {
        return packed.loadOut().sheet().compartments().stream()
                .filter(sheet -> sheet.jointId().equals(joint.joint().id()))
                .map(sheet -> new Case(packed.loadOut(), joint, packed, sheet))
                .findFirst();
    }

    private static Filled filled(Case each, LoadOutPicture.Extent scale, Display display) {
        var fit = each.packed().fit();
        String joint = each.joint().joint().name();
        return new Filled(
                joint,
                fit.fits(),
                FitWords.of(fit, display),
                fit.items().stream()
                        .map(item -> new Item(item.name(), where(item, display), item.fits()))
                        .toList(),
                charge(each.joint(), each.packed(), display),
                LoadOutPicture.of(
                        each.loadOut().sheet().name() + ", " + joint, each.packed(), each.sheet(), scale, display));
    }

    /** "45 mm to 210 mm in"; of what would lie outside, that. */
    static String where(ItemFit item, Display display) {
        return item.from() < 0 || !item.fits()
                ? "finds no room"
                : display.depth(item.from()) + " to " + display.depth(item.to()) + " in";
    }

    private static String charge(JointFit joint, JointFit.Packed packed, Display display) {
        if (!packed.fit().fits()) {
            return "No charge is worked out for what does not fit.";
        }
        var measure = Measure.of(joint.setup().sheet());
        String before = Words.of(Display.near(packed.now().handbookCharge(), measure));
        return packed.then()
                .map(then -> "Free volume " + Words.brief(display.volume(then.freeVolume())) + ", handbook charge "
                        + Words.of(Display.near(then.handbookCharge(), measure)) + " (" + before
                        + " in the setup in force)")
                .orElse("No gas volume is left with it.");
    }
}
