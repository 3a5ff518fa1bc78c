package org.sunder.page;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.planning.Evidence;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.MassUnit;
import org.sunder.picture.ChargeRuler;
import org.sunder.picture.ChargeRulerPicture;
import org.sunder.picture.OutcomeMark;
import org.sunder.picture.SideView;
import org.sunder.picture.SideViewPicture;

/**
 * What the first page shows where there is no rocket yet: what it will look like. Charges are those of the example's nose.
 *
 * @param rocket a rocket from the side, opened at a joint
 * @param next a ruler in the midst of testing
 * @param done a ruler at the end of it
 */
record WelcomePictures(Map<Integer, String> rocket, Map<Integer, String> next, Map<Integer, String> done) {

    private static final double RADIUS = 0.049;
    private static final double NOSE = 0.62;
    private static final int POINTS = 32;

    static final WelcomePictures ALL = new WelcomePictures(
            Drawn.across(width -> SideViewPicture.of(view(), width)),
            drawn(ruler("The example after one test", List.of(firing("0.85", Outcome.PARTIAL)), "1.05", null, null)),
            drawn(ruler(
                    "The example after three tests",
                    List.of(
                            firing("0.85", Outcome.PARTIAL),
                            firing("1.05", Outcome.SEPARATED),
                            firing("1.05", Outcome.SEPARATED)),
                    null,
                    "1.30",
                    "1.65")));

    private static SideView view() {
        List<SideView.Station> nose = IntStream.rangeClosed(0, POINTS)
                .mapToObj(i -> new SideView.Station(NOSE * i / POINTS, RADIUS * ellipse((double) i / POINTS)))
                .toList();
        return new SideView(
                "A rocket with two joints",
                List.of(
                        new SideView.Part(SideView.Kind.NOSE, nose, true),
                        new SideView.Cut("main", "nose to bay", Evidence.SUFFICIENT, inside(0.045, false), true, null),
                        SideView.Part.straight(SideView.Kind.BAY, 0.09, RADIUS, true),
                        new SideView.Cut(
                                "drogue", "bay to booster", Evidence.BUILDING, inside(0.095, true), false, null),
                        SideView.Part.straight(SideView.Kind.TUBE, 0.56, RADIUS, true),
                        SideView.Part.straight(SideView.Kind.TAIL, 0.5, RADIUS, true)));
    }

    private static double ellipse(double along) {
        return StrictMath.sqrt(1 - (1 - along) * (1 - along));
    }

    private static SideView.Inside inside(double length, boolean ofForePart) {
        return new SideView.Inside(length, 0.046, ofForePart);
    }

    private static ChargeRuler ruler(
            String subject,
            List<ChargeRuler.Firing> firings,
            @Nullable String next,
            @Nullable String flight,
            @Nullable String backup) {
        return new ChargeRuler(
                subject,
                firings,
                flight == null
                        ? new ChargeRuler.Band(grams("0.73"), grams("0.97"), grams("1.34"))
                        : new ChargeRuler.Band(grams("0.70"), grams("0.91"), grams("1.12")),
                find(next),
                find(flight),
                find(backup),
                grams("0.66"),
                grams("2.08"),
                grams("0.05"));
    }

    private static ChargeRuler.Firing firing(String charge, Outcome outcome) {
        return new ChargeRuler.Firing(grams(charge), grams(charge), new OutcomeMark(outcome, false, false, false));
    }

    private static @Nullable Mass find(@Nullable String value) {
        return Stream.ofNullable(value).map(WelcomePictures::grams).findFirst().orElse(null);
    }

    private static Mass grams(String value) {
        return new Mass(new BigDecimal(value), MassUnit.GRAM);
    }

    private static Map<Integer, String> drawn(ChargeRuler ruler) {
        return Drawn.inAColumn(width -> ChargeRulerPicture.of(ruler, width, ChargeRulerPicture.Size.SMALL));
    }
}
