package org.sunder.engine.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.util.FastMath;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.learning.model.Filming;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Trial;
import org.sunder.engine.learning.posterior.LeafPosterior;
import org.sunder.engine.learning.posterior.Surprise;

/**
 * All that a plan for one joint in its current setup rests on. Charges are whole multiples of the measure's step.
 *
 * @param posterior what is known of the current setup; it contains every counted firing
 * @param handbookCharge what the textbook formula asks for, kg
 * @param handbookPressure gauge pressure of the handbook charge, Pa
 * @param ceiling charge never to be exceeded, kg
 * @param measureStep step of the scale or measure, kg
 * @param firings firings of this joint, in order of time
 * @param surpriseUnanswered whether the last counted firing was a surprise, see {@link Surprise}
 * @param setupChanged whether the setup was changed since the last counted separated firing
 * @param goal what is aimed at
 * @param limitStated whether the ceiling is a limit that the flyer stated; else it is a guard for want of one
 * @param filming how firings are filmed; null where they are not. It weighs in the choice of a charge; what follows an
 *     outcome is planned as if no speed were read, since at the field none may be
 */
public record PlanningCase(
        LeafPosterior posterior,
        double handbookCharge,
        double handbookPressure,
        double ceiling,
        double measureStep,
        List<Firing> firings,
        boolean surpriseUnanswered,
        boolean setupChanged,
        Goal goal,
        boolean limitStated,
        @Nullable Filming filming) {

    /** A charge on the grid may differ from its decimal value by rounding; relative. */
    private static final double ROUNDING = 1e-9;

    public PlanningCase {
        firings = List.copyOf(firings);
        if (!(handbookCharge > 0 && handbookPressure > 0 && ceiling > 0 && measureStep > 0)
                || Double.isInfinite(handbookCharge + handbookPressure + ceiling + measureStep)) {
            throw new IllegalArgumentException("charges, pressure and the measure's step must be positive and finite");
        }
    }

    /** A case whose ceiling is a stated limit. */
    public PlanningCase(
            LeafPosterior posterior,
            double handbookCharge,
            double handbookPressure,
            double ceiling,
            double measureStep,
            List<Firing> firings,
            boolean surpriseUnanswered,
            boolean setupChanged,
            Goal goal) {
        this(
                posterior,
                handbookCharge,
                handbookPressure,
                ceiling,
                measureStep,
                firings,
                surpriseUnanswered,
                setupChanged,
                goal,
                true);
    }

    /** A case whose firings are not filmed. */
    public PlanningCase(
            LeafPosterior posterior,
            double handbookCharge,
            double handbookPressure,
            double ceiling,
            double measureStep,
            List<Firing> firings,
            boolean surpriseUnanswered,
            boolean setupChanged,
            Goal goal,
            boolean limitStated) {
        this(
                posterior,
                handbookCharge,
                handbookPressure,
                ceiling,
                measureStep,
                firings,
                surpriseUnanswered,
                setupChanged,
                goal,
                limitStated,
                null);
    }

    /** This case where firings are filmed; as it is where {@code how} is null. */
    public PlanningCase filmed(@Nullable Filming how) {
        return new PlanningCase(
                posterior,
                handbookCharge,
                handbookPressure,
                ceiling,
                measureStep,
                firings,
                surpriseUnanswered,
                setupChanged,
                goal,
                limitStated,
                how);
    }

    /** This case with another measure, whose step is in kg. */
    PlanningCase inStepsOf(double step) {
        return new PlanningCase(
                posterior,
                handbookCharge,
                handbookPressure,
                ceiling,
                step,
                firings,
                surpriseUnanswered,
                setupChanged,
                goal,
                limitStated,
                filming);
    }

    /** The charge of so many steps of the measure, kg. */
    public double charge(int steps) {
        return steps * measureStep;
    }

    /** Log ratio of so many steps of the measure. */
    public double logRatio(int steps) {
        return FastMath.log(charge(steps) / handbookCharge);
    }

    /** Most steps that do not exceed a charge in kg. */
    int stepsAtMost(double charge) {
        return (int) Math.min(Integer.MAX_VALUE, Math.floor(charge / measureStep * (1 + ROUNDING)));
    }

    /** Fewest steps that reach a charge in kg. */
    int stepsAtLeast(double charge) {
        return (int) Math.min(Integer.MAX_VALUE, Math.ceil(charge / measureStep * (1 - ROUNDING)));
    }

    /** Fewest steps, one or more, that reach a log ratio. */
    int stepsReaching(double logRatio) {
        return Math.max(1, stepsAtLeast(handbookCharge * FastMath.exp(logRatio)));
    }

    List<Firing> counted() {
        return firings.stream().filter(Firing::counted).toList();
    }

    /** This case after one more undamaging firing of so many steps in the current setup. */
    PlanningCase after(int steps, Outcome outcome) {
        double x = logRatio(steps);
        List<Firing> more = new ArrayList<>(firings);
        double pressure = handbookPressure * charge(steps) / handbookCharge;
        more.add(new Firing(charge(steps), x, pressure, outcome, false, true, true));
        return ending(posterior, new Trial(x, outcome), more);
    }

    /**
     * This case where the last firing was another.
     *
     * @param before what was known before it
     * @param trial what it taught
     * @param all the firings, it among them
     */
    private PlanningCase ending(LeafPosterior before, Trial trial, List<Firing> all) {
        return new PlanningCase(
                before.after(trial),
                handbookCharge,
                handbookPressure,
                ceiling,
                measureStep,
                all,
                Surprise.of(before, trial).surprising(),
                setupChanged && trial.outcome() != Outcome.SEPARATED,
                goal,
                limitStated,
                filming);
    }

    /** The last counted firing, if it was of the current setup. */
    Optional<Firing> last() {
        List<Firing> counted = counted();
        return counted.isEmpty() || !counted.get(counted.size() - 1).currentSetup()
                ? Optional.empty()
                : Optional.of(counted.get(counted.size() - 1));
    }

    /** This case had its last counted firing, of the current setup, ended otherwise and done no damage. */
    PlanningCase lastInstead(Outcome other) {
        Firing last = last().orElseThrow();
        Trial had = new Trial(last.logRatio(), last.outcome());
        List<Firing> changed = new ArrayList<>(firings);
        changed.set(
                firings.lastIndexOf(last),
                new Firing(
                        last.charge(), last.logRatio(), last.gaugePressure(), other, false, true, true, last.ground()));
        return ending(posterior.without(had), new Trial(last.logRatio(), other), changed);
    }
}
