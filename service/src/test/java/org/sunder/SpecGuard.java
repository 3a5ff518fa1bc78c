package org.sunder;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Holds every answer against the specification that the service serves: status documented, media type documented, body
 * valid by JSON Schema 2020-12 with nothing in it that the schema does not name. Many may ask it at once.
 */
final class SpecGuard {

    private final JsonNode spec;
    private final Map<Pattern, JsonNode> paths = new LinkedHashMap<>();
    private final Map<String, Schema> schemas = new ConcurrentHashMap<>();

    SpecGuard(String specification) {
        JsonMapper json = new JsonMapper();
        spec = json.readTree(specification);
        close(spec.path("components").path("schemas"));
        spec.path("paths")
                .forEachEntry((path, item) -> paths.put(Pattern.compile(path.replaceAll("\\{[^/]+}", "[^/]+")), item));
    }

    /** What is wrong with an answer; empty where nothing is, or where the path is no operation of the API. */
    List<String> faults(String method, String path, int status, String mediaType, JsonNode body) {
        JsonNode item = paths.entrySet().stream()
                .filter(entry -> entry.getKey().matcher(path).matches())
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(null);
        JsonNode operation = item == null ? null : item.get(method.toLowerCase(java.util.Locale.ROOT));
        if (operation == null || status == 304) {
            return List.of();
        }
        JsonNode response = resolved(operation.path("responses").path(String.valueOf(status)));
        if (response.isMissingNode()) {
            return List.of(method + " " + path + ": status " + status + " is not in the specification");
        }
        if (body.isEmpty() && !response.has("content")) {
            return List.of();
        }
        String type = mediaType.replaceAll(";.*", "");
        JsonNode schema = response.path("content").path(type).path("schema");
        if (schema.isMissingNode()) {
            return List.of(method + " " + path + " " + status + ": " + type + " is not in the specification");
        }
        if (!type.endsWith("json")) {
            return List.of(); // a file: that it is one of that kind is all that a schema says
        }
        return schema(schema).validate(body).stream()
                .map(error -> method + " " + path + " " + status + ": " + error)
                .toList();
    }

    /** The headers that the specification promises of an answer. */
    java.util.Set<String> headers(String method, String path, int status) {
        return paths.entrySet().stream()
                .filter(entry -> entry.getKey().matcher(path).matches())
                .findFirst()
                .map(entry -> resolved(entry.getValue()
                                .path(method.toLowerCase(java.util.Locale.ROOT))
                                .path("responses")
                                .path(String.valueOf(status)))
                        .path("headers"))
                .map(headers -> java.util.Set.copyOf(headers.propertyNames()))
                .orElse(java.util.Set.of());
    }

    /** A response said once for all operations is referred to. */
    private JsonNode resolved(JsonNode response) {
        String reference = response.path("$ref").asString("");
        return reference.isEmpty() ? response : spec.at(reference.substring(1));
    }

    private Schema schema(JsonNode node) {
        return schemas.computeIfAbsent(node.toString(), text -> {
            ObjectNode whole = (ObjectNode) new JsonMapper().readTree(text);
            whole.set("components", spec.path("components"));
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(whole);
        });
    }

    /** No fields beyond those named. */
    private static void close(JsonNode components) {
        components.forEach(schema -> {
            if (schema instanceof ObjectNode object && object.has("properties")) {
                object.put("additionalProperties", false);
            }
        });
    }
}
