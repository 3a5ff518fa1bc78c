package org.sunder.checks;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.stream.IntStream;
import org.sunder.airframe.PackedItemSheet;
import org.sunder.engine.physics.packing.LoadOut;
import org.sunder.web.RequestList;

/** One way to pack a compartment. */
@Schema(name = "PackedAlternative", description = "One way to pack a compartment.")
record Alternative(
        @Schema(example = "long case")
        @NotBlank(message = "a name is needed") @Size(max = 80, message = "1 to 80 characters") String name,

        @Schema(description = "What is in it, each stacked from its place in the order listed.")
        @Size(max = 50, message = "at most 50 items") List<@NotNull @Valid PackedItemSheet> items) {

    Alternative {
        items = RequestList.of(items);
    }

    /** For the engine, each known by its position: names need not differ. */
    static List<LoadOut> loadOuts(List<Alternative> alternatives) {
        return IntStream.range(0, alternatives.size())
                .mapToObj(i -> new LoadOut(
                        String.valueOf(i),
                        alternatives.get(i).items().stream()
                                .map(PackedItemSheet::item)
                                .toList()))
                .toList();
    }
}
