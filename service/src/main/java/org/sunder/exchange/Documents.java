package org.sunder.exchange;

import java.sql.ResultSet;
import org.sunder.json.StoredJson;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;

/** Stored documents: shown as the JSON they are. What they describe is read by the rules of the calls, see {@link RowRules}. */
final class Documents {

    private static final int LONGEST = 200_000;
    private static final JsonMapper JSON = StoredJson.mapper();

    static final Form SETUP = form("the setup of a joint");
    static final Form LOAD_OUT = form("a load-out");

    private Documents() {}

    private static Form form(String allowed) {
        return new Form(allowed, ResultSet::getString, text -> shown((String) text), Documents::text);
    }

    /** One that is no JSON, by a hand in the database, is shown as the text it is. */
    private static JsonNode shown(String text) {
        try {
            return JSON.readTree(text);
        } catch (JacksonException e) {
            return JsonNodeFactory.instance.stringNode(text);
        }
    }

    private static String text(JsonNode node) {
        String text = JSON.writeValueAsString(node);
        if (!node.isObject() || text.length() > LONGEST) {
            throw new IllegalArgumentException("not a sheet");
        }
        return text;
    }
}
