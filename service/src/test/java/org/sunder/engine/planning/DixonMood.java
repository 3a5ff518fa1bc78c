package org.sunder.engine.planning;

/**
 * Estimates from an up-and-down run (W. J. Dixon, A. M. Mood, J. Am. Stat. Assoc. 43 (1948) 109): mean and scatter of the
 * threshold in the run's own units; scatter 1.620 d (variance ratio + 0.029), or 0.53 d where the ratio is 0.3 or less, as
 * in ISO 12107.
 */
record DixonMood(double mean, double scatter) {

    /**
     * @param levels levels fired, as whole steps above {@code origin}
     * @param responded whether each responded
     * @param byResponses whether the responses are counted, else the others; the fewer of the two
     */
    static DixonMood of(double origin, double step, int[] levels, boolean[] responded, boolean byResponses) {
        double n = 0;
        double a = 0;
        double b = 0;
        for (int i = 0; i < levels.length; i++) {
            if (responded[i] == byResponses) {
                n++;
                a += levels[i];
                b += levels[i] * levels[i];
            }
        }
        double ratio = n == 0 ? 0 : (n * b - a * a) / (n * n);
        double scatter = ratio > 0.3 ? 1.620 * step * (ratio + 0.029) : 0.53 * step;
        double middle = n == 0 ? levels[0] - 0.5 : a / n + (byResponses ? -0.5 : 0.5);
        return new DixonMood(origin + step * middle, scatter);
    }
}
