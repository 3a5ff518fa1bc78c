package org.sunder.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.sunder.Client;
import org.sunder.Samples;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A larger export: all that another one holds, many times over under other ids. */
public final class CopiedFleet {

    private static final Pattern ID = Pattern.compile("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");

    private final ObjectNode export;

    /**
     * Many times over what an export holds.
     *
     * @param export the whole document
     */
    public CopiedFleet(JsonNode export) {
        this.export = (ObjectNode) export;
    }

    /** Enters one airframe with its log, which is then copied. */
    static CopiedFleet ofOneAirframe(Client client) {
        String joint = client.joint();
        for (int i = 0; i < 8; i++) {
            String test = client.post(joint + "/ground-tests", Samples.test("0.8" + i, "none"))
                    .header("Location");
            if (i % 4 == 0) {
                client.post(test + "/void", "{\"reason\":\"igniter\"}");
            }
            String changed = Samples.SETUP.replace("\"value\":15,", "\"value\":15." + i + ",");
            client.put(joint + "/setup", changed, "If-Match", "*");
        }
        return new CopiedFleet(client.get("/api/export").body());
    }

    /** The export, in the order that the service gives, and about so many characters long. */
    String ofSize(int characters) {
        return times(characters / export.toString().length());
    }

    /** The export, in the order that the service gives, so many times over. */
    public String times(int copies) {
        ObjectNode all = new JsonMapper().createObjectNode();
        export.forEachEntry((name, rows) -> all.set(name, rows.isArray() ? copied((ArrayNode) rows, copies) : rows));
        return all.toString();
    }

    private static ArrayNode copied(ArrayNode rows, int copies) {
        JsonMapper json = new JsonMapper();
        List<String> copied = new ArrayList<>();
        for (int i = 0; i < copies; i++) {
            for (JsonNode row : rows) {
                long copy = i;
                copied.add(
                        ID.matcher(row.toString()).replaceAll(id -> Matcher.quoteReplacement(other(id.group(), copy))));
            }
        }
        copied.sort(null); // every row begins with its id
        return (ArrayNode) json.readTree("[" + String.join(",", copied) + "]");
    }

    /** Another id for each copy, the same wherever it stands. */
    private static String other(String id, long copy) {
        UUID first = UUID.fromString(id);
        return new UUID(first.getMostSignificantBits() + (copy << 16), first.getLeastSignificantBits()).toString();
    }
}
