package org.sunder.advice;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.UnitSystem;
import org.sunder.engine.learning.posterior.CorrectionFactor;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.planning.EvidenceReport;
import org.sunder.engine.planning.FilmWorth;
import org.sunder.engine.planning.NextStep;
import org.sunder.engine.planning.Reason;
import org.sunder.engine.planning.SetupChange;
import org.sunder.engine.planning.Worth;
import org.sunder.engine.quantity.Mass;

/**
 * What to do next at a joint.
 *
 * @param step fire, stop, state a limit or change the setup
 * @param reason why, with where a first charge comes from
 * @param evidence how far the tests support a flight charge
 * @param correction learned factor on the handbook charge
 * @param physics the setup in physics
 * @param measure step of charges
 * @param units units that the airframe is shown in
 * @param compared what the charges compared are worth, where asked for
 * @param changes other setups that would do, where the setup has to change
 * @param filmed what films of the firings do for it; null where none are counted on, or where a speed would tell nothing
 * @param basis what it rests on
 */
public record NextAdvice(
        NextStep step,
        Reason reason,
        EvidenceReport evidence,
        CorrectionFactor correction,
        JointPhysics physics,
        Mass measure,
        UnitSystem units,
        List<Worth> compared,
        List<SetupChange> changes,
        @Nullable Filmed filmed,
        Basis basis) {

    public NextAdvice {
        compared = List.copyOf(compared);
        changes = List.copyOf(changes);
    }

    /** This advice with what the charges compared are worth. */
    NextAdvice with(List<Worth> explained) {
        return new NextAdvice(
                step, reason, evidence, correction, physics, measure, units, explained, changes, filmed, basis);
    }

    /**
     * What films of the firings do.
     *
     * @param percent standard deviation of a speed, in percent of it
     * @param worth what the film of the charge named does
     */
    public record Filmed(BigDecimal percent, FilmWorth worth) {}
}
