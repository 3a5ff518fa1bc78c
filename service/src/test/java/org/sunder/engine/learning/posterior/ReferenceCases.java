package org.sunder.engine.learning.posterior;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.JointLog;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.SetupLog;
import org.sunder.engine.learning.model.Trial;
import org.sunder.engine.learning.quadrature.Grid;
import org.sunder.engine.learning.quadrature.QuadratureRules;

/** The reference posterior under resources/reference/posterior: made in Python by nested quadrature. */
final class ReferenceCases {

    /** Model of the reference: one level below the fleet, no lapse. */
    static final Priors PRIORS = new Priors(0.35, 0.20, 0, 0, 0.10, 0.5, 0.15, 0.5, 0);

    private ReferenceCases() {}

    /** A design fine enough to show that only the standard design's coarseness separates it from the reference. */
    static Design fine(Priors priors, double step) {
        return new Design(
                priors.scatterLogSd() == 0 ? QuadratureRules.known() : QuadratureRules.normal(0.75, 5),
                priors.bandLogSd() == 0 ? QuadratureRules.known() : QuadratureRules.normal(0.75, 5),
                priors.airframeScale() == 0 ? QuadratureRules.known() : QuadratureRules.halfNormal(20, 5),
                priors.jointScale() == 0 ? QuadratureRules.known() : QuadratureRules.halfNormal(8, 4.5),
                priors.setupScale() == 0 ? QuadratureRules.known() : QuadratureRules.halfNormal(8, 4.5),
                Grid.symmetric(step, (int) Math.ceil(2.6 / step)),
                1,
                (int) Math.ceil(5.5 * priors.meanSd() / step));
    }

    /** One airframe with one joint and one setup per group. */
    static FleetLog log(String name) {
        Map<Integer, List<Trial>> groups = new TreeMap<>();
        for (String[] cells : rows("data.csv")) {
            if (cells[0].equals(name)) {
                groups.computeIfAbsent(Integer.valueOf(cells[1]), group -> new ArrayList<>())
                        .add(new Trial(StrictMath.log(Double.parseDouble(cells[2])), outcome(cells[3])));
            }
        }
        return new FleetLog(
                groups.values().stream().map(ReferenceCases::airframe).toList());
    }

    static AirframeLog airframe(List<Trial> trials) {
        return new AirframeLog(List.of(new JointLog(List.of(new SetupLog(0, trials)))));
    }

    private static Outcome outcome(String word) {
        return word.equals("full") ? Outcome.SEPARATED : Outcome.valueOf(word.toUpperCase(Locale.ROOT));
    }

    /** Rows of a file without its header. */
    static List<String[]> rows(String file) {
        return table("posterior/" + file);
    }

    /** Rows, without the header, of a file of comma-separated values under resources/reference. */
    static List<String[]> table(String path) {
        try (InputStream in = ReferenceCases.class.getResourceAsStream("/reference/" + path)) {
            return Arrays.stream(new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\\R"))
                    .skip(1)
                    .map(line -> line.split(","))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
