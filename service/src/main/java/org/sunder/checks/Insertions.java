package org.sunder.checks;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.sunder.airframe.Display;
import org.sunder.airframe.EngineFaults;
import org.sunder.airframe.Measure;
import org.sunder.airframe.SetupPhysics;
import org.sunder.airframe.SetupSheet;
import org.sunder.airframe.SheetTranslation;
import org.sunder.checks.InsertionView.ShiftView;
import org.sunder.checks.InsertionView.SideView;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.engine.physics.SetupFault;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.cavity.Content;
import org.sunder.engine.physics.charge.BayShift;
import org.sunder.engine.physics.charge.InsertionTable;
import org.sunder.engine.physics.charge.JointSetup;
import org.sunder.engine.physics.packing.FitCheck;
import org.sunder.engine.physics.packing.LoadOutFit;
import org.sunder.engine.quantity.Length;

/** A bay between two compartments: what it leaves of each. */
@Component
class Insertions {

    private static final int USUAL_STEPS = 10;

    private final SetupPhysics physics;

    Insertions(SetupPhysics physics) {
        this.physics = physics;
    }

    InsertionView answer(InsertionRequest body, Display display) {
        SetupSheet sheet = physics.resolve(body.setup(), "/setup");
        JointSetup setup = SheetTranslation.translate(sheet);
        return EngineFaults.named(path -> path, () -> {
            int bay = bay(setup, body.bay(), "");
            checkDepths(body);
            int steps = body.steps() == null ? USUAL_STEPS : body.steps();
            InsertionTable table = InsertionTable.of(setup, bay, InsertionTable.steps(body.from(), body.to(), steps));
            ShiftView shift = body.other() == null ? null : shift(sheet, bay, body.other(), display);
            return InsertionView.of(table, shift, display, Measure.of(sheet));
        });
    }

    private ShiftView shift(SetupSheet sheet, int bay, InsertionRequest.OtherSide other, Display display) {
        SetupSheet otherSheet = physics.resolve(other.setup(), "/other/setup");
        JointSetup setup = SheetTranslation.translate(sheet);
        JointSetup otherSetup = SheetTranslation.translate(otherSheet);
        int otherBay = bay(otherSetup, other.bay(), "other.");
        Length pushedIn = ((Content.Intrusion) otherSetup.contents().get(otherBay)).depth();
        return EngineFaults.named(path -> path.startsWith("loadOuts") ? "other." + path : "other.setup." + path, () -> {
            double left = FitCheck.of(otherSetup.cavity(), pushedIn, Alternative.loadOuts(other.loadOuts())).stream()
                    .mapToDouble(Insertions::room)
                    .min()
                    .orElse(0);
            Length room = Length.ofMetres(left);
            BayShift shift = BayShift.farthest(setup, bay, otherSetup, otherBay, room);
            return new ShiftView(
                    display.length(left),
                    display.length(shift.farthest()),
                    SideView.of(shift.first(), display, Measure.of(sheet)),
                    SideView.of(shift.second(), display, Measure.of(otherSheet)));
        });
    }

    /** No room where something does not fit as it is. */
    private static double room(LoadOutFit fit) {
        return fit.fits() ? Math.max(0, fit.lengthLeft()) : 0;
    }

    private static int bay(JointSetup setup, @Nullable Integer stated, String base) {
        for (int i = 0; i < setup.contents().size(); i++) {
            boolean intrusion = setup.contents().get(i) instanceof Content.Intrusion;
            if (intrusion && (stated == null || stated == i)) {
                return i;
            }
        }
        String value = stated == null ? "" : stated.toString();
        throw new UnsoundSetupException(List.of(new SetupFault(
                base + "bay", value, "no intrusion stands there", "the position of an intrusion in the contents")));
    }

    private static void checkDepths(InsertionRequest body) {
        List<SetupFault> faults = new ArrayList<>();
        depth("from", body.from(), faults);
        depth("to", body.to(), faults);
        if (faults.isEmpty() && body.to().metres() <= body.from().metres()) {
            faults.add(new SetupFault("to", show(body.to()), "not more than from", "more than from"));
        }
        if (!faults.isEmpty()) {
            throw new UnsoundSetupException(faults);
        }
    }

    private static void depth(String path, Length depth, List<SetupFault> faults) {
        if (!SetupBounds.DEPTH.contains(depth.metres())) {
            faults.add(new SetupFault(path, show(depth), "out of bounds", SetupBounds.DEPTH.text()));
        }
    }

    private static String show(Length length) {
        return length.value() + " " + length.unit();
    }
}
