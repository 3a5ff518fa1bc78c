package org.sunder.airframe.persistence;

import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.util.ConcurrentLruCache;
import org.sunder.config.StoredJson;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** Sheets as stored documents. The same document is the same sheet, so what was read lately is kept. */
@Component
class SheetDocuments {

    private static final int KEPT = 2000;

    private final JsonMapper json = StoredJson.mapper();
    private final ConcurrentLruCache<Document, Object> known = new ConcurrentLruCache<>(KEPT, this::parsed);

    private record Document(String text, Class<?> type) {}

    private Object parsed(Document document) {
        return json.readValue(document.text(), document.type());
    }

    String write(Object sheet) {
        return json.writeValueAsString(sheet);
    }

    <T> T read(UUID id, String document, Class<T> type) {
        try {
            return type.cast(known.get(new Document(document, type)));
        } catch (JacksonException e) {
            throw new IllegalStateException("The stored document " + id + " cannot be read", e);
        }
    }
}
