package org.sunder.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.sunder.access.CurrentFlyer;
import org.sunder.advice.PoolEffects;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Joint;
import org.sunder.engine.learning.posterior.CorrectionFactor;
import org.sunder.persistence.DurableTransactions;
import org.sunder.pool.PoolChoices;
import org.sunder.pool.PoolFile;
import org.sunder.pool.PoolMaking;
import org.sunder.pool.PoolSnapshot;
import org.sunder.pool.PoolSnapshots;
import org.sunder.pool.PoolUse;

/** What others' rockets teach: what the pool says, what it does for a joint, what one shares of one's own. */
@Controller
class PoolPages extends Pages {

    private static final String POOL = "redirect:/pool";
    private static final int SHOWN = 10;

    private final PoolUse use;
    private final PoolSnapshots snapshots;
    private final PoolMaking making;
    private final PoolEffects effects;
    private final Airframes airframes;
    private final CurrentFlyer flyer;
    private final DurableTransactions transactions;

    PoolPages(
            PoolUse use,
            PoolSnapshots snapshots,
            PoolMaking making,
            PoolEffects effects,
            Airframes airframes,
            CurrentFlyer flyer,
            DurableTransactions transactions) {
        this.use = use;
        this.snapshots = snapshots;
        this.making = making;
        this.effects = effects;
        this.airframes = airframes;
        this.flyer = flyer;
        this.transactions = transactions;
    }

    /** A snapshot in the list. */
    record Known(int number, String from, String day, boolean standing) {}

    /**
     * One thing that the pool knows better than nobody.
     *
     * @param slug of its term
     * @param name of it
     * @param said with the pool and without, in words
     * @param picture of both
     */
    record Lesson(String slug, String name, String said, Map<Integer, String> picture) {}

    /** A number of tests, and the chance of being done after them. */
    record Done(String tests, String with, String without) {}

    @GetMapping(path = "/pool", produces = MediaType.TEXT_HTML_VALUE)
    String pool(Model model) {
        PoolChoices choices = use.choices();
        Optional<PoolSnapshot> newest = snapshots.newest();
        Integer stands = choices.using() ? choices.snapshot() : null;
        model.addAttribute("choices", choices);
        model.addAttribute("stands", stands);
        model.addAttribute("headline", headline(choices, stands, newest.isPresent()));
        model.addAttribute("from", stands == null ? null : from(snapshots.get(stands)));
        model.addAttribute(
                "newer",
                newest.map(PoolSnapshot::number)
                        .filter(number -> choices.using() && !number.equals(stands))
                        .orElse(null));
        model.addAttribute("lessons", effects.taught().map(PoolPages::lessons).orElse(List.of()));
        model.addAttribute(
                "snapshots",
                snapshots.before(Integer.MAX_VALUE, SHOWN).stream()
                        .map(snapshot -> known(snapshot, stands))
                        .toList());
        model.addAttribute("keeper", flyer.admin());
        model.addAttribute("fewest", PoolFile.FEWEST_FLYERS);
        return "page/pool";
    }

    private static String headline(PoolChoices choices, @Nullable Integer stands, boolean any) {
        if (!choices.using()) {
            return "You work without the pool";
        }
        if (stands != null) {
            return "Your answers rest on snapshot " + stands;
        }
        return any ? "Your answers rest on your own tests alone, so far" : "There is nothing from others yet";
    }

    private static String from(PoolSnapshot snapshot) {
        String many =
                snapshot.file().flyers() + " flyers and " + snapshot.file().tests() + " counted tests";
        return snapshot.givenBy() == null ? many + " of this service" : many + ", given by " + snapshot.givenBy();
    }

    private static Known known(PoolSnapshot snapshot, @Nullable Integer stands) {
        return new Known(
                snapshot.number(),
                from(snapshot),
                Words.day(snapshot.file().date()),
                stands != null && stands == snapshot.number());
    }

    private static List<Lesson> lessons(PoolEffects.Taught taught) {
        return List.of(
                lesson(
                        taught,
                        PoolEffects.Belief::correction,
                        CorrectionPicture.Scale.CORRECTION,
                        "correction",
                        "Where charges lie against the handbook"),
                lesson(
                        taught,
                        PoolEffects.Belief::scatter,
                        CorrectionPicture.Scale.SHARE,
                        "scatter",
                        "How much shots scatter"),
                lesson(
                        taught,
                        PoolEffects.Belief::band,
                        CorrectionPicture.Scale.SHARE,
                        "partial-band",
                        "How wide the band of partial separation is"));
    }

    private static Lesson lesson(
            PoolEffects.Taught taught,
            Function<PoolEffects.Belief, CorrectionFactor> what,
            CorrectionPicture.Scale scale,
            String slug,
            String name) {
        CorrectionFactor with = what.apply(taught.with());
        CorrectionFactor without = what.apply(taught.without());
        return new Lesson(
                slug,
                name,
                "With the pool " + scale.of(with) + ", without " + scale.of(without) + ".",
                CorrectionPicture.of(
                        name,
                        List.of(
                                new CorrectionPicture.Row("without the pool", null, without),
                                new CorrectionPicture.Row("with the pool", null, with)),
                        scale));
    }

    @PostMapping("/pool/sharing")
    String share(@RequestParam boolean on) {
        transactions.commit(() -> use.share(on));
        return POOL;
    }

    @PostMapping("/pool/using")
    String use(@RequestParam boolean on) {
        transactions.commit(() -> use.use(on));
        return POOL;
    }

    @PostMapping("/pool/move")
    String move() {
        transactions.commit(use::move);
        return POOL;
    }

    @PostMapping("/pool/renew")
    String renew() {
        making.renew();
        return POOL;
    }

    @GetMapping(path = "/joints/{id}/pool", produces = MediaType.TEXT_HTML_VALUE)
    String joint(@PathVariable UUID id, Model model) {
        Joint joint = airframes.getJoint(id);
        model.addAttribute("airframe", airframes.get(joint.airframeId()));
        model.addAttribute("joint", joint);
        model.addAttribute("used", use.choices().using());
        PoolEffects.Effect effect = effects.at(id).orElse(null);
        model.addAttribute("found", effect != null);
        if (effect != null) {
            model.addAttribute("headline", headline(effect));
            model.addAttribute("with", AnswerWords.brief(effect.with().step(), effect.measure()));
            model.addAttribute("without", AnswerWords.brief(effect.without().step(), effect.measure()));
            model.addAttribute("done", done(effect));
        }
        return "page/joint-pool";
    }

    private static String headline(PoolEffects.Effect effect) {
        String with = count(effect.with());
        String without = count(effect.without());
        String likely = with + (with.equals("1") ? " more test is likely" : " more tests are likely");
        return with.equals(without)
                ? "With the pool's experience or without it, " + likely
                : "With the pool's experience " + likely + ", without it " + without;
    }

    private static String count(PoolEffects.Way way) {
        return way.likely()
                .map(tests -> tests == 0 ? "no" : tests.toString())
                .orElse("more than " + (way.doneAfter().size() - 1));
    }

    private static List<Done> done(PoolEffects.Effect effect) {
        List<Done> rows = new ArrayList<>();
        for (int tests = 1; tests < effect.with().doneAfter().size(); tests++) {
            rows.add(new Done(
                    tests == 1 ? "1 test" : tests + " tests",
                    AnswerWords.inHundred(effect.with().doneAfter().get(tests)),
                    AnswerWords.inHundred(effect.without().doneAfter().get(tests))));
        }
        return rows;
    }
}
