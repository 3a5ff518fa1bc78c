package org.sunder.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.cfg.JsonNodeFeature;
import tools.jackson.databind.json.JsonMapper;

/** JSON as kept in the database: the words of the API, read with no request around. */
public final class StoredJson {

    private StoredJson() {}

    /** A mapper for stored documents. */
    public static JsonMapper mapper() {
        FaultSink sink = (pointer, detail, code, allowed, value) -> {
            throw new IllegalStateException("stored document at " + pointer + ": " + detail);
        };
        return JsonMapper.builder()
                .addModule(new QuantityModule(sink))
                .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
                .changeDefaultPropertyInclusion(inclusion -> inclusion.withValueInclusion(JsonInclude.Include.NON_NULL))
                .build();
    }
}
