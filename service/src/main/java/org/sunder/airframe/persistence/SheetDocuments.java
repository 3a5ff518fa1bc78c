package org.sunder.airframe.persistence;

import java.util.UUID;
import org.springframework.stereotype.Component;
import org.sunder.config.StoredJson;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** Sheets as stored documents. */
@Component
class SheetDocuments {

    private final JsonMapper json = StoredJson.mapper();

    String write(Object sheet) {
        return json.writeValueAsString(sheet);
    }

    <T> T read(UUID id, String document, Class<T> type) {
        try {
            return json.readValue(document, type);
        } catch (JacksonException e) {
            throw new IllegalStateException("The stored document " + id + " cannot be read", e);
        }
    }
}
