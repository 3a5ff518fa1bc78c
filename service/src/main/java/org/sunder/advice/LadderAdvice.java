package org.sunder.advice;

import java.util.List;
import org.sunder.airframe.SetupSheet;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.physics.charge.Ceiling;
import org.sunder.engine.planning.EvidenceReport;
import org.sunder.engine.planning.Ladder;
import org.sunder.engine.planning.Reason;
import org.sunder.engine.quantity.Mass;

/**
 * The tests of a joint rolled forward, for the field.
 *
 * @param airframe name of the airframe
 * @param joint name of the joint
 * @param sheet the setup in force
 * @param ladder the tree, the chances of being done, and what to pack
 * @param reason why its first step is what it is
 * @param ceiling the charge never to be exceeded
 * @param warnings what to mind of the setup
 * @param evidence how far the tests support a flight charge now
 * @param measure step of charges
 * @param basis what it rests on
 */
public record LadderAdvice(
        String airframe,
        String joint,
        SetupSheet sheet,
        Ladder ladder,
        Reason reason,
        Ceiling ceiling,
        List<Warning> warnings,
        EvidenceReport evidence,
        Mass measure,
        Basis basis) {

    public LadderAdvice {
        warnings = List.copyOf(warnings);
    }
}
