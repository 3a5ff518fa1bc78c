package org.sunder.airframe.persistence;

import java.util.UUID;
import org.springframework.stereotype.Component;
import org.sunder.airframe.SetupSheet;
import org.sunder.config.StoredJson;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** Sheets as stored documents. */
@Component
class SheetDocuments {

    private final JsonMapper json = StoredJson.mapper();

    String write(SetupSheet sheet) {
        return json.writeValueAsString(sheet);
    }

    SetupSheet read(UUID id, String document) {
        try {
            return json.readValue(document, SetupSheet.class);
        } catch (JacksonException e) {
            throw new IllegalStateException("The stored setup " + id + " cannot be read", e);
        }
    }
}
