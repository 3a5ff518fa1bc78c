package org.sunder.airframe.persistence;

import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.LoadingCache;
import jakarta.validation.Validator;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.sunder.json.StoredJson;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** Sheets as stored documents. The same document is the same sheet, so what was read lately is kept. */
@Component
class SheetDocuments {

    private static final int KEPT = 2000;

    private final JsonMapper json = StoredJson.mapper();
    private final LoadingCache<Document, Optional<Object>> known =
            Caffeine.newBuilder().maximumSize(KEPT).executor(Runnable::run).build(this::parsed);
    private final Validator validator;

    SheetDocuments(Validator validator) {
        this.validator = validator;
    }

    private record Document(String text, Class<?> type) {}

    private Optional<Object> parsed(Document document) {
        try {
            Object sheet = json.readValue(document.text(), document.type());
            return Optional.ofNullable(sheet)
                    .filter(read -> validator.validate(read).isEmpty());
        } catch (JacksonException | IllegalStateException e) {
            return Optional.empty();
        }
    }

    String write(Object sheet) {
        return json.writeValueAsString(sheet);
    }

    /** The sheet; empty where the document is none, by an older version or a hand in the database. */
    <T> Optional<T> find(String document, Class<T> type) {
        return known.get(new Document(document, type)).map(type::cast);
    }
}
