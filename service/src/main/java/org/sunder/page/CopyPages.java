package org.sunder.page;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.AirframeRequest;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Copies;
import org.sunder.airframe.InstalledLoadOut;
import org.sunder.airframe.Joint;
import org.sunder.airframe.LoadOuts;
import org.sunder.persistence.DurableTransactions;
import org.sunder.problem.Fault;
import org.sunder.problem.ProblemException;
import org.sunder.problem.StrictReading;

/** Joints, airframes and load-outs once more under another name. */
@Controller
class CopyPages extends Pages {

    private static final String CARRIED =
            "It takes the whole setup in force with it, and no test: a copy is tested anew.";

    private final Airframes airframes;
    private final LoadOuts loadOuts;
    private final Copies copies;
    private final StrictReading reading;
    private final DurableTransactions transactions;

    CopyPages(
            Airframes airframes,
            LoadOuts loadOuts,
            Copies copies,
            StrictReading reading,
            DurableTransactions transactions) {
        this.airframes = airframes;
        this.loadOuts = loadOuts;
        this.copies = copies;
        this.reading = reading;
        this.transactions = transactions;
    }

    /**
     * The form.
     *
     * @param carried what a copy takes with it
     * @param label of the name
     * @param name as typed
     * @param to airframes to choose from, if there is a choice
     * @param chosen the one chosen
     * @param faults what was wrong, in words
     */
    record Form(
            String heading,
            String carried,
            String label,
            String name,
            List<Airframe> to,
            @Nullable UUID chosen,
            List<String> faults) {}

    @GetMapping(path = "/joints/{id}/copy", produces = MediaType.TEXT_HTML_VALUE)
    String joint(@PathVariable UUID id, Model model) {
        Joint joint = airframes.getJoint(id);
        return show(model, joint.airframeId(), joint, form(joint, joint.name(), joint.airframeId(), List.of()));
    }

    @PostMapping(path = "/joints/{id}/copy")
    ModelAndView joint(
            @PathVariable UUID id,
            @RequestParam(defaultValue = "") String name,
            @RequestParam UUID airframe,
            Model model) {
        Joint joint = airframes.getJoint(id);
        return copied(
                name,
                () -> "/joints/" + copies.joint(id, airframe, name).id() + "/plan?stored",
                faults -> show(model, joint.airframeId(), joint, form(joint, name, airframe, faults)));
    }

    @GetMapping(path = "/airframes/{id}/copy", produces = MediaType.TEXT_HTML_VALUE)
    String airframe(@PathVariable UUID id, Model model) {
        Airframe airframe = airframes.get(id);
        return show(model, id, null, form(airframe, "", List.of()));
    }

    @PostMapping(path = "/airframes/{id}/copy")
    ModelAndView airframe(@PathVariable UUID id, @RequestParam(defaultValue = "") String name, Model model) {
        Airframe airframe = airframes.get(id);
        return copied(
                name,
                () -> "/airframes/" + copies.airframe(id, name).id(),
                faults -> show(model, id, null, form(airframe, name, faults)));
    }

    @GetMapping(path = "/airframes/{id}/load-outs/{loadOutId}/copy", produces = MediaType.TEXT_HTML_VALUE)
    String loadOut(@PathVariable UUID id, @PathVariable UUID loadOutId, Model model) {
        return show(model, id, null, form(loadOut(id, loadOutId), "", List.of()));
    }

    @PostMapping(path = "/airframes/{id}/load-outs/{loadOutId}/copy")
    ModelAndView loadOut(
            @PathVariable UUID id,
            @PathVariable UUID loadOutId,
            @RequestParam(defaultValue = "") String name,
            Model model) {
        InstalledLoadOut loadOut = loadOut(id, loadOutId);
        return copied(
                name,
                () -> {
                    copies.loadOut(loadOutId, name);
                    return "/airframes/" + id + "/load-outs";
                },
                faults -> show(model, id, null, form(loadOut, name, faults)));
    }

    private InstalledLoadOut loadOut(UUID airframe, UUID id) {
        InstalledLoadOut loadOut = loadOuts.get(id);
        if (!loadOut.airframeId().equals(airframe)) {
            throw ProblemException.notFound("load-out", id);
        }
        return loadOut;
    }

    /** Copies and goes there; or shows the form again with what was typed and what was wrong. */
    private ModelAndView copied(String name, Supplier<String> copy, Function<List<String>, String> again) {
        try {
            reading.check(AirframeRequest.class, "name", name);
            return new ModelAndView("redirect:" + transactions.commit(copy));
        } catch (ProblemException e) {
            List<String> faults = e.faults().isEmpty()
                    ? List.of(Objects.requireNonNullElse(e.getMessage(), "It cannot be copied."))
                    : e.faults().stream().map(Fault::words).toList();
            ModelAndView page = new ModelAndView(again.apply(faults));
            page.setStatus(e.type().status());
            return page;
        }
    }

    private Form form(Joint joint, String name, UUID chosen, List<String> faults) {
        return new Form("Copy " + joint.name(), CARRIED, "Name of the copy", name, inUse(joint), chosen, faults);
    }

    private static Form form(Airframe airframe, String name, List<String> faults) {
        String carried = "Its joints and load-outs come along. " + CARRIED;
        return new Form("Copy " + airframe.name(), carried, "Name of the new rocket", name, List.of(), null, faults);
    }

    private static Form form(InstalledLoadOut loadOut, String name, List<String> faults) {
        String carried = "Everything packed in it comes along.";
        return new Form("Copy " + loadOut.sheet().name(), carried, "Name of the copy", name, List.of(), null, faults);
    }

    /** The joint's own airframe first. */
    private List<Airframe> inUse(Joint joint) {
        return Stream.concat(
                        Stream.of(airframes.get(joint.airframeId())),
                        airframes.all().stream()
                                .filter(airframe -> airframe.archivedAt() == null
                                        && !airframe.id().equals(joint.airframeId()))
                                .sorted(Comparator.comparing(Airframe::name)))
                .toList();
    }

    private String show(Model model, UUID airframe, @Nullable Joint joint, Form form) {
        model.addAttribute("airframe", airframes.get(airframe));
        model.addAttribute("joint", joint);
        model.addAttribute("form", form);
        return "page/copy";
    }
}
