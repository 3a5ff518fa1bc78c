package org.sunder.advice.web;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.sunder.advice.LadderAdvice;
import org.sunder.advice.Overview;
import org.sunder.advice.Overviews;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.ContentSheet;
import org.sunder.airframe.DeploymentEvent;
import org.sunder.airframe.Display;
import org.sunder.airframe.Joint;
import org.sunder.airframe.SetupSheet;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.picture.ChargeRulerPicture;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;

/** The ladder as a card for the field, one sheet of paper that carries all it needs. */
@Component
class LadderCard {

    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH).withZone(ZoneOffset.UTC);
    private static final int MOST_PACKED = 6;

    private final Overviews overviews;
    private final Airframes airframes;
    private final ITemplateEngine templates;
    private final Clock clock;

    LadderCard(Overviews overviews, Airframes airframes, ITemplateEngine templates, Clock clock) {
        this.overviews = overviews;
        this.airframes = airframes;
        this.templates = templates;
        this.clock = clock;
    }

    /** The card as a page. */
    String of(UUID id, int depth) {
        Overview fleet = overviews.now(); // ladder and ruler stand on one sheet, so from one reading
        LadderAdvice advice = fleet.ladder(id, depth);
        LadderView ladder = LadderViews.of(advice);
        Joint joint = airframes.getJoint(id);
        Context context = new Context(Locale.ROOT);
        context.setVariable("ladder", ladder);
        context.setVariable("plan", "/joints/" + id + "/plan");
        context.setVariable("example", joint.airframeId().equals(Airframe.EXAMPLE));
        context.setVariable("held", held(joint, advice.sheet()));
        context.setVariable("packed", packed(advice.sheet()));
        context.setVariable(
                "powder",
                advice.sheet().powder() == null ? "powder" : advice.sheet().powder());
        context.setVariable("measure", Display.words(advice.measure()));
        context.setVariable(
                "never", Display.words(Display.never(advice.ceiling().chargeKg(), advice.measure())));
        context.setVariable(
                "ruler", ChargeRulerPicture.of(fleet.ruler(id), LadderPicture.WIDTH, ChargeRulerPicture.Size.SMALL));
        context.setVariable("picture", LadderPicture.of(ladder));
        context.setVariable("early", flownAfterLess(ladder.first()));
        context.setVariable("done", done(ladder.doneAfter()));
        context.setVariable("made", DAY.format(clock.instant()));
        return templates.process("ladder-card", context);
    }

    /** "1 test: 73 %, 2 tests: 96 %", up to where it is as good as certain. */
    private static String done(List<BigDecimal> after) {
        List<String> words = new ArrayList<>();
        for (int tests = 1; tests < after.size(); tests++) {
            BigDecimal percent = after.get(tests).movePointRight(2).setScale(0, RoundingMode.HALF_EVEN);
            words.add(tests + (tests == 1 ? " test: " : " tests: ") + percent + " %");
            if (percent.intValue() >= 100) {
                break;
            }
        }
        return String.join(", ", words);
    }

    private static String held(Joint joint, SetupSheet sheet) {
        List<String> words = new ArrayList<>();
        if (joint.event() != DeploymentEvent.OTHER) {
            words.add(joint.event().toString());
        }
        sheet.pins().forEach(set -> words.add(set.count() + " × " + set.thread()));
        if (sheet.pins().isEmpty()) {
            words.add("no pins");
        }
        if (sheet.fitForce() != null) {
            words.add("fit " + Display.words(sheet.fitForce()));
        }
        return String.join(" · ", words);
    }

    private static @Nullable String packed(SetupSheet sheet) {
        List<ContentSheet> contents = sheet.contents();
        if (contents.isEmpty()) {
            return null;
        }
        String words =
                contents.stream().limit(MOST_PACKED).map(LadderCard::content).collect(Collectors.joining(", "));
        int more = contents.size() - MOST_PACKED;
        return more > 0 ? words + " and " + more + " more" : words;
    }

    private static String content(ContentSheet content) {
        return content.name() + (content.mass() == null ? "" : " " + Display.words(content.mass()));
    }

    /** Whether a flight charge follows an outcome that did not separate: right by the rules, but it asks for a reason. */
    private static boolean flownAfterLess(LadderView.StepView step) {
        return step.then().stream()
                .anyMatch(branch ->
                        (branch.outcome() != Outcome.SEPARATED && branch.step().flightCharge() != null)
                                || flownAfterLess(branch.step()));
    }
}
