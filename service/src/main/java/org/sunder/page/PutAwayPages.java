package org.sunder.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Joint;
import org.sunder.groundtest.EnteredByMistake;
import org.sunder.groundtest.EnteredByMistake.Along;
import org.sunder.persistence.DurableTransactions;

/** What is out of the way: airframes put away, which come back with a press, and what was entered by mistake, which goes for good. */
@Controller
class PutAwayPages extends Pages {

    private final Airframes airframes;
    private final EnteredByMistake mistakes;
    private final DurableTransactions transactions;

    PutAwayPages(Airframes airframes, EnteredByMistake mistakes, DurableTransactions transactions) {
        this.airframes = airframes;
        this.mistakes = mistakes;
        this.transactions = transactions;
    }

    /** An airframe put away. */
    record Away(UUID id, String name, String since, String joints) {}

    /**
     * What is asked before something goes for good.
     *
     * @param name what would go
     * @param along what would go with it, in words
     * @param stays why it cannot go, or null
     * @param agreed what the page named, so that nothing else goes along
     * @param elsewhere where one goes instead
     * @param again whether something came in since it was asked
     */
    record Question(
            String name, List<String> along, @Nullable String stays, String agreed, String elsewhere, boolean again) {}

    @GetMapping(path = "/airframes/put-away", produces = MediaType.TEXT_HTML_VALUE)
    String putAway(Model model) {
        Map<UUID, Long> joints =
                airframes.allJoints().stream().collect(Collectors.groupingBy(Joint::airframeId, Collectors.counting()));
        model.addAttribute(
                "away",
                airframes.all().stream()
                        .filter(airframe -> airframe.archivedAt() != null)
                        .sorted(Comparator.comparing(
                                        (Airframe airframe) -> Objects.requireNonNull(airframe.archivedAt()))
                                .reversed())
                        .map(airframe -> away(airframe, joints.getOrDefault(airframe.id(), 0L)))
                        .toList());
        return "page/put-away";
    }

    @PostMapping("/airframes/{id}/bring-back")
    String bringBack(@PathVariable UUID id) {
        transactions.commit(() -> airframes.bringBack(id));
        return "redirect:/airframes/" + id;
    }

    @GetMapping(path = "/joints/{id}/remove", produces = MediaType.TEXT_HTML_VALUE)
    ModelAndView joint(@PathVariable UUID id) {
        return ask(airframes.getJoint(id), false, HttpStatus.OK);
    }

    /** Removes it, if nothing came in since the page was made. */
    @PostMapping("/joints/{id}/remove")
    ModelAndView removeJoint(@PathVariable UUID id, @RequestParam(defaultValue = "") String agreed) {
        Joint joint = airframes.getJoint(id);
        boolean gone = removed(agreed, () -> mistakes.withJoint(id), () -> mistakes.removeJoint(id, version -> {}));
        return gone
                ? new ModelAndView("redirect:/airframes/" + joint.airframeId())
                : ask(joint, true, HttpStatus.CONFLICT);
    }

    @GetMapping(path = "/airframes/{id}/remove", produces = MediaType.TEXT_HTML_VALUE)
    ModelAndView airframe(@PathVariable UUID id) {
        return ask(airframes.get(id), false, HttpStatus.OK);
    }

    /** As {@link #removeJoint}. */
    @PostMapping("/airframes/{id}/remove")
    ModelAndView removeAirframe(@PathVariable UUID id, @RequestParam(defaultValue = "") String agreed) {
        Airframe airframe = airframes.get(id);
        boolean gone =
                removed(agreed, () -> mistakes.withAirframe(id), () -> mistakes.removeAirframe(id, version -> {}));
        return gone ? new ModelAndView("redirect:/") : ask(airframe, true, HttpStatus.CONFLICT);
    }

    /** Whether what would go along is still what was agreed to, and so all of it went. */
    private boolean removed(String agreed, Supplier<Along> along, Runnable removal) {
        return transactions.commit(() -> {
            boolean same = key(along.get()).equals(agreed);
            if (same) {
                removal.run();
            }
            return same;
        });
    }

    private static Away away(Airframe airframe, long joints) {
        String words = joints == 0 ? "no joint" : joints == 1 ? "1 joint" : joints + " joints";
        return new Away(airframe.id(), airframe.name(), Words.of(Objects.requireNonNull(airframe.archivedAt())), words);
    }

    private ModelAndView ask(Joint joint, boolean again, HttpStatusCode status) {
        Along along = mistakes.withJoint(joint.id());
        String elsewhere = "/joints/" + joint.id() + "/plan";
        return page(airframes.get(joint.airframeId()), joint, question(joint.name(), along, elsewhere, again), status);
    }

    private ModelAndView ask(Airframe airframe, boolean again, HttpStatusCode status) {
        Along along = mistakes.withAirframe(airframe.id());
        String elsewhere = "/airframes/" + airframe.id();
        return page(airframe, null, question(airframe.name(), along, elsewhere, again), status);
    }

    private static ModelAndView page(
            Airframe airframe, @Nullable Joint joint, Question question, HttpStatusCode status) {
        ModelAndView page = new ModelAndView("page/remove");
        page.setStatus(status);
        page.addObject("airframe", airframe);
        page.addObject("joint", joint);
        page.addObject("question", question);
        return page;
    }

    private static Question question(String name, Along along, String elsewhere, boolean again) {
        return new Question(name, words(along), along.stays(), key(along), elsewhere, again);
    }

    private static List<String> words(Along along) {
        List<String> words = new ArrayList<>();
        along.joints().forEach(joint -> words.add("the joint " + joint));
        if (along.setups() > 0) {
            words.add(along.setups() == 1 ? "1 setup" : along.setups() + " setups");
        }
        along.loadOuts().forEach(loadOut -> words.add("the load-out " + loadOut));
        along.emptied().forEach(loadOut -> words.add("what the load-out " + loadOut + " has in it"));
        return words;
    }

    /** Changes with what would go along. */
    private static String key(Along along) {
        return along.fired() + "-" + along.joints().size() + "-" + along.setups() + "-"
                + along.loadOuts().size() + "-" + along.emptied().size();
    }
}
