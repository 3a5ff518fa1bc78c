package org.sunder.web;

import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.headers.Header;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.StringSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import org.springdoc.core.customizers.GlobalOpenApiCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.core.io.ClassPathResource;
import tools.jackson.databind.json.JsonMapper;

/** Puts the example of each operation beside it: files under openapi/, recorded from the service itself. */
@Configuration(proxyBeanMethods = false)
class OpenApiExamples {

    private static final String JSON = "application/json";

    private final JsonMapper json = new JsonMapper();

    @Bean
    @Order
    GlobalOpenApiCustomizer examples() {
        return api -> api.getPaths()
                .forEach((path, item) -> item.readOperations().forEach(operation -> illustrate(path, operation)));
    }

    private void illustrate(String path, Operation operation) {
        String id = operation.getOperationId();
        if (operation.getRequestBody() != null) {
            find(id + ".request.json")
                    .ifPresent(example ->
                            content(operation.getRequestBody().getContent()).setExample(example));
        }
        operation.getResponses().forEach((code, response) -> {
            if (code.startsWith("2") && response.getContent() != null) {
                find(id + ".response.json")
                        .ifPresent(example -> content(response.getContent()).setExample(example));
            }
            if (code.equals("201")) {
                response.addHeaderObject("Location", header("Path of what was created."));
            }
            boolean versioned = !operation.getTags().contains("Access");
            boolean kept = path.endsWith("}") && id.startsWith("get"); // what is computed has no version
            boolean file = path.endsWith("/photo") && code.startsWith("2") && response.getContent() != null;
            if (file || (versioned && (code.equals("201") || kept))) {
                response.addHeaderObject("ETag", header("Version of the representation."));
            }
        });
    }

    private static Header header(String description) {
        return new Header().description(description).schema(new StringSchema());
    }

    private static MediaType content(Content content) {
        return Optional.ofNullable(content.get(JSON)).orElseGet(() -> {
            MediaType any = content.values().iterator().next();
            content.clear();
            content.addMediaType(JSON, any);
            return any;
        });
    }

    private Optional<Map<?, ?>> find(String name) {
        ClassPathResource file = new ClassPathResource("openapi/" + name);
        if (!file.exists()) {
            return Optional.empty();
        }
        try (InputStream stream = file.getInputStream()) {
            return Optional.of(json.readValue(stream, Map.class));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
