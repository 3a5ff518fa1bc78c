package org.sunder.airframe;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.sunder.airframe.LoadOutSheet.CompartmentSheet;
import org.sunder.engine.physics.cavity.Content;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.charge.JointSetup;
import org.sunder.engine.physics.packing.FitCheck;
import org.sunder.engine.physics.packing.LoadOut;
import org.sunder.engine.physics.packing.LoadOutFit;
import org.sunder.engine.quantity.Length;

/** The compartment of a joint, which load-outs fill; what is pushed in at the joint stays that of the setup. */
final class Compartment {

    private final JointSetup setup;

    Compartment(SetupSheet sheet) {
        setup = SheetTranslation.translate(sheet);
    }

    /** What fits, worst first; each is named by its position in the list. */
    List<LoadOutFit> fit(List<CompartmentSheet> packed) {
        double deepest = pushedIn().stream()
                .mapToDouble(bay -> bay.depth().metres())
                .max()
                .orElse(0);
        return fit(packed, Length.ofMetres(deepest));
    }

    /** The same where what is pushed in at the joint reaches to another depth. */
    List<LoadOutFit> fit(List<CompartmentSheet> packed, Length deepest) {
        List<LoadOut> loadOuts = IntStream.range(0, packed.size())
                .mapToObj(i -> new LoadOut(
                        String.valueOf(i),
                        packed.get(i).items().stream()
                                .map(PackedItemSheet::item)
                                .toList()))
                .toList();
        return FitCheck.of(setup.cavity(), deepest, loadOuts);
    }

    /**
     * The joint with these things in its compartment instead.
     *
     * @throws org.sunder.engine.physics.UnsoundSetupException where no gas volume is left beside them
     */
    JointPhysics filledWith(CompartmentSheet packed) {
        List<Content> contents = new ArrayList<>(pushedIn());
        packed.items().forEach(item -> contents.add(item.content()));
        return JointPhysics.of(setup.withContents(contents));
    }

    private List<Content.Intrusion> pushedIn() {
        return setup.contents().stream()
                .filter(Content.Intrusion.class::isInstance)
                .map(Content.Intrusion.class::cast)
                .toList();
    }
}
