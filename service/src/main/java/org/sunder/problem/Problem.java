package org.sunder.problem;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.caution.CautionView;

/**
 * A problem document, RFC 9457.
 *
 * @param type relative URI of the page about this kind of problem
 * @param title short, the same for every problem of the type
 * @param status the HTTP status
 * @param detail about this occurrence
 * @param instance the path that was asked for
 * @param requestId finds the request in the log
 * @param errors for bad input, every fault found
 * @param cautions what to mind, where the problem names a charge
 */
public record Problem(
        String type,
        String title,
        int status,
        String detail,
        String instance,
        @Nullable String requestId,
        @Nullable List<Fault> errors,
        @Nullable List<CautionView> cautions) {

    static Problem of(ProblemType type, String detail, String instance, List<Fault> errors) {
        return new Problem(
                type.uri(),
                type.title(),
                type.status().value(),
                detail,
                instance,
                RequestIds.current(),
                errors.isEmpty() ? null : List.copyOf(errors),
                type.namesCharge() ? CautionView.all() : null);
    }
}
