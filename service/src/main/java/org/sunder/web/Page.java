package org.sunder.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/**
 * One page of a list.
 *
 * @param items the entries, in the list's stable order
 * @param next cursor of the following page; absent on the last
 */
public record Page<T>(
        List<T> items,

        @Schema(
                description = "Cursor of the next page; absent on the last one",
                example = "MjAyNi0wNS0wM1QwOToyMDowMFp8MDE5Mw")
        @Nullable String next) {

    /** Entries a page has where none is asked for. */
    public static final int USUAL = 50;

    /** Most entries a page may have; a larger limit is cut to it. */
    public static final int MOST = 200;

    /**
     * Cuts a page from rows read with one to spare.
     *
     * @param rows up to {@code limit + 1} rows
     * @param limit size of the page
     * @param cursor position of a row
     * @param view what is shown of a row
     */
    public static <R, T> Page<T> of(List<R> rows, int limit, Function<R, String> cursor, Function<R, T> view) {
        List<R> shown = rows.subList(0, Math.min(limit, rows.size()));
        String next = rows.size() > limit ? cursor.apply(shown.get(shown.size() - 1)) : null;
        return new Page<>(shown.stream().map(view).toList(), next);
    }

    /** The answer, with the Link header of RFC 8288 where a page follows. */
    public ResponseEntity<Page<T>> answer() {
        HttpHeaders headers = new HttpHeaders();
        if (next != null) {
            String uri = ServletUriComponentsBuilder.fromCurrentRequest()
                    .replaceQueryParam("cursor", next)
                    .build()
                    .toUriString();
            headers.set(HttpHeaders.LINK, "<" + uri + ">; rel=\"next\"");
        }
        return ResponseEntity.ok().headers(headers).body(this);
    }
}
