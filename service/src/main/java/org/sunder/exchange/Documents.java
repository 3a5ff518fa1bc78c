package org.sunder.exchange;

import jakarta.validation.Validation;
import jakarta.validation.Validator;
import java.sql.ResultSet;
import org.sunder.airframe.LoadOutSheet;
import org.sunder.airframe.SetupSheet;
import org.sunder.config.StoredJson;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Stored documents: shown as the JSON they are. */
final class Documents {

    private static final int LONGEST = 200_000;
    private static final JsonMapper JSON = StoredJson.mapper();
    private static final Validator VALIDATOR =
            Validation.buildDefaultValidatorFactory().getValidator();

    static final Form SETUP = form(SetupSheet.class, "the setup of a joint");
    static final Form LOAD_OUT = form(LoadOutSheet.class, "a load-out");

    private Documents() {}

    /** The setup that a stored document describes. */
    static SetupSheet setup(String document) {
        return JSON.readValue(document, SetupSheet.class);
    }

    private static Form form(Class<?> type, String allowed) {
        return new Form(allowed, ResultSet::getString, text -> JSON.readTree((String) text), node -> text(node, type));
    }

    private static String text(JsonNode node, Class<?> type) {
        try {
            Object sheet = JSON.treeToValue(node, type);
            String text = JSON.writeValueAsString(node);
            if (sheet == null
                    || text.length() > LONGEST
                    || !VALIDATOR.validate(sheet).isEmpty()) {
                throw new IllegalArgumentException("not a sheet");
            }
            return text;
        } catch (JacksonException | IllegalStateException e) {
            throw new IllegalArgumentException(e);
        }
    }
}
