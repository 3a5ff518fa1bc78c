package org.sunder.exchange;

import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.util.JsonParserDelegate;

/** Reads rows, none of them larger than a row can be: one row of nothing but brackets would fill the memory. */
final class RowParser extends JsonParserDelegate {

    private static final int MOST_TOKENS = 20_000; // the largest load-out that the API takes has about half

    private String at = "";
    private int left = Integer.MAX_VALUE;

    RowParser(JsonParser parser) {
        super(parser);
    }

    /**
     * A row begins.
     *
     * @param pointer JSON pointer of it
     */
    void beginRow(String pointer) {
        at = pointer;
        left = MOST_TOKENS;
    }

    void endRow() {
        left = Integer.MAX_VALUE;
    }

    @Override
    public @Nullable JsonToken nextToken() {
        if (left-- == 0) {
            throw Import.fault(at, "the row has more in it than any row can", MOST_TOKENS + " values and brackets");
        }
        return super.nextToken();
    }

    @Override
    public @Nullable String nextName() {
        return nextToken() == JsonToken.PROPERTY_NAME ? currentName() : null;
    }
}
