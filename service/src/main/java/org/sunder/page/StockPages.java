package org.sunder.page;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.sunder.stock.PinBatch;
import org.sunder.stock.PinBatches;
import org.sunder.stock.Powders;
import org.sunder.stock.StockPowder;
import org.sunder.web.Cursor;
import org.sunder.web.Page;

/** Powders and batches of pins. */
@Controller
class StockPages extends Pages {

    private final Powders powders;
    private final PinBatches batches;

    StockPages(Powders powders, PinBatches batches) {
        this.powders = powders;
        this.batches = batches;
    }

    @GetMapping(path = "/stock", produces = MediaType.TEXT_HTML_VALUE)
    String stock(Model model) {
        model.addAttribute(
                "powders",
                all(powders::page, powder -> new Cursor(powder.createdAt(), powder.id())).stream()
                        .map(PowderSheet::of)
                        .toList());
        model.addAttribute(
                "batches",
                all(batches::page, batch -> new Cursor(batch.createdAt(), batch.id())).stream()
                        .map(BatchSheet::of)
                        .toList());
        return "page/stock";
    }

    @GetMapping(path = "/stock/powders/new", produces = MediaType.TEXT_HTML_VALUE)
    String newPowder(Model model) {
        return form("A new powder", "powder.js").show(model);
    }

    @GetMapping(path = "/stock/powders/{id}", produces = MediaType.TEXT_HTML_VALUE)
    String powder(@PathVariable UUID id, Model model) {
        StockPowder powder = powders.get(id);
        return form("Powder: " + powder.details().name(), "powder.js").about(id).show(model);
    }

    @GetMapping(path = "/stock/pins/new", produces = MediaType.TEXT_HTML_VALUE)
    String newBatch(Model model) {
        return form("A new batch of pins", "pins.js").show(model);
    }

    @GetMapping(path = "/stock/pins/{id}", produces = MediaType.TEXT_HTML_VALUE)
    String batch(@PathVariable UUID id, Model model) {
        PinBatch batch = batches.get(id);
        model.addAttribute("batch", BatchSheet.of(batch));
        model.addAttribute("pulled", PullPicture.of(batch));
        return form("Pins: " + batch.details().name(), "pins.js").about(id).show(model);
    }

    private static FormPage form(String heading, String script) {
        return FormPage.of(heading, script).back("/stock", "Stock");
    }

    /** Every page of a list; a stock is small. */
    private static <T> List<T> all(BiFunction<Cursor, Integer, List<T>> page, Function<T, Cursor> at) {
        List<T> all = new ArrayList<>();
        Cursor from = Cursor.NEWEST;
        List<T> found;
        do {
            found = page.apply(from, Page.MOST);
            all.addAll(found.subList(0, Math.min(found.size(), Page.MOST)));
            from = all.isEmpty() ? from : at.apply(all.get(all.size() - 1));
        } while (found.size() > Page.MOST);
        return all;
    }
}
