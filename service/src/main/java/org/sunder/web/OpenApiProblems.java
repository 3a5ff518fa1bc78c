package org.sunder.web;

import io.swagger.v3.core.converter.ModelConverters;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.responses.ApiResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springdoc.core.customizers.OpenApiCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.sunder.problem.Problem;
import org.sunder.problem.ProblemType;

/** Says of every operation which problems it answers with, as problem documents with an example of each. */
@Configuration(proxyBeanMethods = false)
class OpenApiProblems {

    private static final List<ProblemType> READ = List.of(ProblemType.INVALID_INPUT, ProblemType.NOT_ACCEPTABLE);
    private static final List<ProblemType> WRITE = List.of(
            ProblemType.INVALID_INPUT,
            ProblemType.CONFLICT,
            ProblemType.BODY_TOO_LARGE,
            ProblemType.UNSUPPORTED_MEDIA_TYPE,
            ProblemType.UNSOUND_SETUP);
    /** What every operation may answer; said once and referred to. */
    private static final List<ProblemType> ANY = List.of(
            ProblemType.KEY_NEEDED,
            ProblemType.NOT_ALLOWED,
            ProblemType.TOO_MANY_REQUESTS,
            ProblemType.STORAGE_UNAVAILABLE);

    private static final List<ProblemType> CONDITIONAL =
            List.of(ProblemType.VERSION_MISMATCH, ProblemType.VERSION_REQUIRED);

    @Bean
    OpenApiCustomizer problems() {
        return api -> {
            ModelConverters.getInstance(true)
                    .readAll(Problem.class)
                    .forEach((name, schema) -> api.getComponents().addSchemas(name, schema));
            ANY.forEach(type -> api.getComponents().addResponses(name(type), response("/api/airframes", type)));
            api.getPaths()
                    .forEach((path, item) ->
                            item.readOperationsMap().forEach((method, operation) -> describe(path, method, operation)));
            orderPaths(api);
        };
    }

    private static void orderPaths(OpenAPI api) {
        api.getPaths()
                .values()
                .forEach(item -> item.readOperations().forEach(operation -> {
                    Map<String, ApiResponse> ordered = new LinkedHashMap<>();
                    operation.getResponses().entrySet().stream()
                            .sorted(Map.Entry.comparingByKey())
                            .forEach(entry -> ordered.put(entry.getKey(), entry.getValue()));
                    operation.getResponses().clear();
                    operation.getResponses().putAll(ordered);
                }));
    }

    private static void describe(String path, PathItem.HttpMethod method, Operation operation) {
        // Springdoc lists what the advice class may answer with on every operation; here each has its own.
        operation.getResponses().keySet().removeIf(code -> code.startsWith("4") || code.startsWith("5"));
        boolean write = method != PathItem.HttpMethod.GET;
        ANY.forEach(type -> operation
                .getResponses()
                .addApiResponse(
                        String.valueOf(type.status().value()),
                        new ApiResponse().$ref("#/components/responses/" + name(type))));
        (write ? WRITE : READ).forEach(type -> add(path, operation, type));
        if (path.startsWith("/api/checks/")) {
            operation.getResponses().keySet().remove("409"); // nothing is stored that could be in the way
        }
        if (path.contains("{") || path.equals("/api/field-kit")) {
            add(path, operation, ProblemType.NOT_FOUND);
        }
        boolean versioned = !operation.getTags().contains("Access");
        if (versioned && (method == PathItem.HttpMethod.PUT || method == PathItem.HttpMethod.DELETE)) {
            CONDITIONAL.forEach(type -> add(path, operation, type));
        }
        if (!versioned && method == PathItem.HttpMethod.POST) {
            add(path, operation, ProblemType.IDEMPOTENCY_KEY_REUSED);
        }
        if (path.endsWith("/access-keys") && write) {
            add(path, operation, ProblemType.SHOWN_ONCE);
        }
        if (path.startsWith("/api/joints/{id}/") && method == PathItem.HttpMethod.GET) {
            add(path, operation, ProblemType.UNSOUND_SETUP);
        }
        if (path.endsWith("/photo") && write) {
            add(path, operation, ProblemType.UNSOUND_PHOTO);
        }
        if (path.endsWith("/flight-charge")) {
            add(path, operation, ProblemType.NO_FLIGHT_CHARGE);
        }
        if ((path.endsWith("/ground-tests") || path.endsWith("/flight-events")) && write) {
            add(path, operation, ProblemType.UNSOUND_CHARGE);
        }
    }

    private static void add(String path, Operation operation, ProblemType type) {
        operation.getResponses().addApiResponse(String.valueOf(type.status().value()), response(path, type));
    }

    private static ApiResponse response(String path, ProblemType type) {
        Map<String, Object> example = new LinkedHashMap<>();
        example.put("type", type.uri());
        example.put("title", type.title());
        example.put("status", type.status().value());
        example.put("detail", type.explanation());
        example.put("instance", path.replaceAll("\\{[a-zA-Z]+}", "01980a6e-3c40-7d2b-9c53-5f0f6b1c2d3e"));
        MediaType content = new MediaType()
                .schema(new Schema<>().$ref("#/components/schemas/Problem"))
                .example(example);
        return new ApiResponse()
                .description(type.title() + ".")
                .content(new Content().addMediaType("application/problem+json", content));
    }

    private static String name(ProblemType type) {
        return type.slug();
    }
}
