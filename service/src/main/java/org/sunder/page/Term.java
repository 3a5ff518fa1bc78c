package org.sunder.page;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A word of the trade or of this program, explained once for all pages.
 *
 * @param slug its anchor
 * @param name the word
 * @param meaning one sentence
 * @param formula how it is worked out, or null
 * @param advice what to do about it
 */
record Term(
        String slug, String name, String meaning, @Nullable String formula, String advice) {

    /** Words of this program. */
    static final List<Term> OURS = List.of(
            of(
                    "joint",
                    "joint",
                    "One place where two sections of a rocket are meant to part, with the compartment whose pressure parts it.",
                    "Describe each one that a charge opens; one that only a motor opens needs none."),
            of(
                    "compartment",
                    "compartment",
                    "The closed hollow that a charge fills with gas.",
                    "Measure inside, from the closed far end to the joint."),
            of(
                    "setup",
                    "setup",
                    "A joint as it is prepared for a test or a flight: hollow, contents, pins, fit and powder.",
                    "Change it here whenever you change the rocket; every test keeps the setup it was fired in."),
            of(
                    "load-out",
                    "load-out",
                    "What is installed for one kind of flight: motor case, gear and recovery parts.",
                    "Describe the fullest one too, and see whether it fits."),
            by(
                    "free-volume",
                    "free volume",
                    "The room that is left for gas when everything is packed.",
                    "V = the hollow − what is packed in it",
                    "Weigh cloth and cord: gas fills the folds, so only the material itself takes room."),
            by(
                    "area",
                    "area",
                    "The circle at the joint on which the pressure pushes.",
                    "A = π/4 · d²",
                    "Measure the inner diameter at the joint itself."),
            by(
                    "retention",
                    "retention",
                    "The force that keeps the joint closed: pins and fit together.",
                    "F = pins · strength of one + pull of the fit",
                    "Pull some pins of your batch and the empty joint with a luggage scale."),
            by(
                    "threshold-pressure",
                    "threshold pressure",
                    "The pressure above the air outside at which the joint is expected to part.",
                    "p = F / A",
                    "Where it nears what the airframe withstands, use fewer pins."),
            by(
                    "powder-force",
                    "powder force",
                    "The energy that a kilogram of powder gives to the gas.",
                    "λ = R · T",
                    "Leave it at the standard value unless you know better for your lot."),
            by(
                    "handbook-charge",
                    "handbook charge",
                    "What the textbook formula asks for, with no test at all.",
                    "m = p · V / λ",
                    "Take it as an estimate: it is no charge to fire or to fly."),
            by(
                    "correction",
                    "correction",
                    "How many times the handbook charge this joint really takes, learned from its tests.",
                    "κ = charge at which it parts half of the time / handbook charge",
                    "Far from 1, look for a wrong measure, a leak, or a tight fit."),
            of(
                    "next-charge",
                    "next charge",
                    "The charge to fire next on the ground.",
                    "Fire just that, or log what you really fired."),
            of(
                    "plan",
                    "plan",
                    "What to fire, and what after each outcome, with the reasons.",
                    "Print it as a card, so that the field needs no network."),
            of(
                    "flight-charge",
                    "flight charge",
                    "The smallest charge that the tests support for a flight.",
                    "Fly it only in the setup that was tested."),
            by(
                    "backup-charge",
                    "backup charge",
                    "The second charge of a flight, fired later in case the first failed.",
                    "1.25 times the flight charge, never above the ceiling",
                    "Give it an igniter and a battery of its own."),
            by(
                    "ceiling",
                    "ceiling",
                    "The charge that must never be exceeded.",
                    "from what the airframe withstands, else 3 times the threshold pressure",
                    "State what your airframe withstands: without that, the limit is only a guard."),
            of(
                    "evidence",
                    "evidence",
                    "How far the tests support a flight charge: none, building, sufficient, stale or conflicting.",
                    "Fly on sufficient evidence only."),
            of(
                    "stale",
                    "stale",
                    "Said of evidence when the setup was changed since it was tested, by more than the tests can carry.",
                    "One test of the new setup is usually enough."),
            of(
                    "conflicting",
                    "conflicting",
                    "Said of evidence when an outcome was most unlikely and nobody has explained it.",
                    "Look at the igniter, the pins and the powder of that test, and void it if something was wrong."),
            of(
                    "outcome",
                    "outcome",
                    "What a firing did: separated is fully apart with the gear out, partial is moved, none is closed.",
                    "Call it partial when in doubt between the last two."),
            of(
                    "void",
                    "void",
                    "Said of a test that is kept but does not count, because something else went wrong.",
                    "Give the reason; a test is never void because its outcome was unwelcome."),
            of(
                    "surprise",
                    "surprise",
                    "An outcome that had less than 2 chances in 100 before it was seen.",
                    "Count the pins, check powder and igniter, then fire the same again."),
            of(
                    "beyond",
                    "beyond",
                    "Said of a firing above the ceiling or the largest step.",
                    "It is kept; look for damage before the next one."),
            of(
                    "chance",
                    "chance of separating",
                    "How likely a charge is to part the joint fully, by all that is known.",
                    "It is an estimate, not a charge to fly."),
            of(
                    "scatter",
                    "scatter",
                    "How much the charge that just parts a joint differs from shot to shot.",
                    "Pack and load the same way each time to keep it small."),
            of(
                    "partial-band",
                    "band of partial separation",
                    "The charges, above those that do nothing, at which a joint moves and does not part.",
                    "A partial says that the joint is near: a little more parts it."),
            of(
                    "pool",
                    "pool",
                    "What the tests of flyers who share them teach of a rocket not yet tested.",
                    "Sharing is your choice, and nobody sees whose tests they were."),
            of(
                    "charge-ruler",
                    "charge ruler",
                    "The one scale of a joint's charges: tests above it, where it is likely to part, what comes next, and the wall.",
                    "Read it from left to right; nothing is ever fired beyond the wall."),
            of(
                    "side-view",
                    "side view",
                    "The rocket drawn to scale from its setups, cut at its joints.",
                    "Press a joint to go to it; what is dashed is not described yet."),
            of(
                    "fleet",
                    "fleet",
                    "All your rockets; what they teach is where the next one starts.",
                    "Log every firing, the bad ones too."),
            of(
                    "measure",
                    "measure",
                    "The smallest step of charge that your scale or spoon can tell.",
                    "State it as it is: every charge named here is a whole number of steps."));

    /** Words of the trade. */
    static final List<Term> TRADE = List.of(
            of("airframe", "airframe", "One rocket as built.", "Enter each one that you build, also the second alike."),
            of(
                    "apogee",
                    "apogee",
                    "The highest point of a flight.",
                    "What opens there meets thin air: give the altitude on the flight sheet."),
            of(
                    "avionics-bay",
                    "avionics bay",
                    "The closed section that holds altimeters and batteries.",
                    "Keep its vent holes open and its bulkheads tight against gas."),
            of(
                    "black-powder",
                    "black powder",
                    "The fine-grained powder of ejection charges.",
                    "Weigh it, keep it closed and away from the work, and follow the law of the place."),
            of("booster", "booster", "The section that holds the motor.", "Count the motor case end as a solid thing."),
            of(
                    "bulkhead",
                    "bulkhead",
                    "A disc that closes a section.",
                    "A compartment begins and ends at one; seal it, since a leak takes gas from the charge."),
            of(
                    "calibre",
                    "calibre",
                    "One outer diameter of the rocket, used as a measure of length.",
                    "Let a shoulder or coupler reach in by one at least."),
            of(
                    "coupler",
                    "coupler",
                    "A tube that joins two tubes from inside.",
                    "Enter how far it comes in: it takes room from the gas."),
            of(
                    "drogue",
                    "drogue",
                    "The small parachute that opens first, high up.",
                    "Name the joint that frees it as its joint."),
            of(
                    "dual-deploy",
                    "dual deploy",
                    "A flight with a small parachute at the top and a large one lower down.",
                    "Describe both joints; each needs tests of its own."),
            of(
                    "ejection-charge",
                    "ejection charge",
                    "The powder that parts a joint in flight.",
                    "Keep everyone out of line with both ends."),
            of(
                    "friction-fit",
                    "friction fit",
                    "A joint held by nothing but its tightness.",
                    "Pull it apart with a luggage scale, as packed, three times."),
            of(
                    "ground-test",
                    "ground test",
                    "Firing a charge on the ground to see whether the joint parts.",
                    "Prepare it as for a flight, fire from a distance, log what it did."),
            of(
                    "igniter",
                    "igniter",
                    "The electric match that lights the charge.",
                    "Measure it, keep its leads shorted, and connect it last."),
            of(
                    "main",
                    "main",
                    "The large parachute that lands the rocket.",
                    "Name the joint that frees it as its joint."),
            of(
                    "nose-cone",
                    "nose cone",
                    "The tip of the rocket, often hollow and used as a compartment.",
                    "Measure it inside: its wall and its tip are no room for gas."),
            of(
                    "payload-tube",
                    "payload tube",
                    "A tube between nose and booster for gear or parachute.",
                    "Enter it as a tube of its inner diameter."),
            of("primary", "primary", "The charge of a flight that fires first.", "Label it apart from the backup."),
            of(
                    "range-safety-officer",
                    "range safety officer",
                    "Who decides at a launch what may fly.",
                    "Show the flight sheet; the decision is not this program's."),
            of(
                    "recovery-harness",
                    "recovery harness",
                    "The cord that keeps the parted sections together.",
                    "Weigh it, and count it among what is packed."),
            by(
                    "shear-pin",
                    "shear pin",
                    "A small nylon screw that keeps a joint closed until the charge breaks it.",
                    "strength = 69 MPa · π/4 · (diameter at the root of the thread)²",
                    "Count them before each test; one missing changes everything."),
            of(
                    "shoulder",
                    "shoulder",
                    "The part of one section that slides into the other.",
                    "Let it reach in by one calibre; below that it may bend in flight."),
            of(
                    "vent-hole",
                    "vent hole",
                    "A hole that lets a compartment or the bay follow the air outside.",
                    "Keep it open; the flight sheet works out those of the bay."));

    /** Those that the page at the field explains: it keeps them on the phone. */
    static final List<Term> AT_THE_FIELD = OURS.stream()
            .filter(term -> List.of("evidence", "ceiling", "backup-charge").contains(term.slug()))
            .toList();

    private static Term of(String slug, String name, String meaning, String advice) {
        return new Term(slug, name, meaning, null, advice);
    }

    private static Term by(String slug, String name, String meaning, String formula, String advice) {
        return new Term(slug, name, meaning, formula, advice);
    }
}
