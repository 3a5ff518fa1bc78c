package org.sunder.advice;

import org.sunder.engine.planning.FilmWorth;

/** What the film of the next firing does, in a sentence. */
public final class FilmWords {

    /** Chances that differ by less are as good as the same. */
    private static final double ALIKE = 0.02;
    /** A chance below this is hardly one. */
    private static final double LEAST = 0.01;

    private FilmWords() {}

    /** Of a firing; where testing may stop, that no film is needed. */
    public static String of(NextAdvice.Filmed films) {
        FilmWorth worth = films.worth();
        if (worth.unread() >= 1) {
            return "Enough is known: no more films are needed.";
        }
        if (worth.read() < LEAST && worth.unread() < LEAST) {
            return "Filmed or not, more tests are likely to follow this one.";
        }
        String read = inHundred(worth.read());
        String unread = inHundred(worth.unread());
        if (Math.abs(worth.read() - worth.unread()) < ALIKE) {
            return "With its film read or not, the chance that this firing is the last test is " + read + ".";
        }
        return worth.read() > worth.unread()
                ? "The chance that this firing is the last test is " + read + " with its film read, " + unread
                        + " without."
                : "The chance that this firing is the last test is " + read
                        + ", since its film may show that one more is called for; " + unread + " without it.";
    }

    private static String inHundred(double chance) {
        return Math.round(100 * chance) + " in 100";
    }
}
