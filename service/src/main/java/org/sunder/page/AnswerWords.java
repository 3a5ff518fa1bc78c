package org.sunder.page;

import org.sunder.advice.BackupWords;
import org.sunder.advice.JointAnswer;
import org.sunder.advice.NextAdvice;
import org.sunder.advice.ReasonWords;
import org.sunder.airframe.Display;
import org.sunder.engine.planning.BackupCharge;
import org.sunder.engine.planning.Evidence;
import org.sunder.engine.planning.FlightCharge;
import org.sunder.engine.planning.NextStep;
import org.sunder.engine.planning.Reason;
import org.sunder.engine.quantity.Mass;

/** The answer for a joint as people read it first: what to do, and why. The same words on every page. */
final class AnswerWords {

    private AnswerWords() {}

    /** What to do: "Fire 1.35 g next", "Fly 1.20 g, backup 1.50 g". */
    static String headline(JointAnswer answer) {
        NextAdvice next = answer.next();
        return next == null ? "Describe the setup anew" : headline(next);
    }

    private static String headline(NextAdvice next) {
        NextStep step = next.step();
        Mass measure = next.measure();
        if (step instanceof NextStep.Fire fire) {
            String charge = charge(fire.charge(), measure);
            if (fire.reason().code() == Reason.Code.SAME_AFTER_SURPRISE) {
                return "Check the last test, then fire " + charge + " again";
            }
            return next.evidence().evidence() == Evidence.STALE
                    ? "Fire " + charge + ": one test after the change of setup"
                    : "Fire " + charge + " next";
        }
        if (step instanceof NextStep.Stop stop) {
            FlightCharge flight = stop.flightCharge();
            return "Fly " + charge(flight.charge(), measure) + ", backup " + charge(flight.backup(), measure);
        }
        return step instanceof NextStep.StateLimit ? "State what the airframe withstands" : "Change the setup";
    }

    /** Why, with its numbers. */
    static String because(JointAnswer answer) {
        NextAdvice next = answer.next();
        return together(
                next == null
                        ? answer.standing().evidence().reason()
                        : (ReasonWords.of(next.reason(), next.measure()) + " " + unproved(answer)).strip());
    }

    /** That the backup named was not fired before; empty where it was, or where none is named. */
    static String unproved(JointAnswer answer) {
        NextAdvice next = answer.next();
        return next != null
                        && next.step() instanceof NextStep.Stop stop
                        && !stop.flightCharge().backup().firedBefore()
                ? "Its backup was " + BackupWords.inShort(stop.flightCharge().backup()) + "."
                : "";
    }

    /** A number and its unit stay on one line. */
    private static String together(String words) {
        return words.replaceAll("(\\d) (%|gr?\\b)", "$1\u00a0$2");
    }

    /** What a step is, in a branch of a plan: "fire 1.55 g", "fly 1.20 g". */
    static String brief(NextStep step, Mass measure) {
        if (step instanceof NextStep.Fire fire) {
            return "fire " + charge(fire.charge(), measure);
        }
        if (step instanceof NextStep.Stop stop) {
            return "fly " + charge(stop.flightCharge().charge(), measure);
        }
        return step instanceof NextStep.StateLimit ? "state what the airframe withstands" : "change the setup";
    }

    /** A charge that was fired at a joint, with the digits of its measure where that is known. */
    static String loaded(JointAnswer at, Mass charge) {
        return Words.of(
                at.next() == null ? charge : Display.loaded(charge, at.next().measure()));
    }

    /** A charge that lies on the measure's grid. */
    static String charge(double kilograms, Mass measure) {
        return Words.of(Display.onMeasure(kilograms, measure));
    }

    private static String charge(BackupCharge backup, Mass measure) {
        return charge(backup.charge(), measure);
    }

    /** A limit, with the digits of the measure and never rounded up. */
    static String limit(double kilograms, Mass measure) {
        return Words.of(Display.never(kilograms, measure));
    }

    /** A charge between the marks, with the digits of the measure. */
    static String near(double kilograms, Mass measure) {
        return Words.of(Display.near(kilograms, measure));
    }

    /** A chance as people count: "86 in 100", never certain. */
    static String inHundred(double chance) {
        long count = Math.round(100 * chance);
        if (count >= 100) {
            return "more than 99 in 100";
        }
        return count <= 0 ? "less than 1 in 100" : count + " in 100";
    }
}
