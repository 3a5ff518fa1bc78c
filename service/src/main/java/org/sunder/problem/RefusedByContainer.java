package org.sunder.problem;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ErrorReportValve;
import org.apache.coyote.AbstractProtocol;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import tools.jackson.databind.json.JsonMapper;

/** Answers what the container refuses before any of the service is reached, such as a path with forbidden characters. */
public class RefusedByContainer extends ErrorReportValve {

    private static final String RETRY_SECONDS = "5";
    private static final JsonMapper JSON = JsonMapper.builder()
            .changeDefaultPropertyInclusion(inclusion ->
                    inclusion.withValueInclusion(com.fasterxml.jackson.annotation.JsonInclude.Include.NON_NULL))
            .build();

    /**
     * A connector told to stop reads no more headers of a request that still arrives, and then calls it one without a host: a
     * phone would take that for its own fault and never send again.
     */
    private static boolean isStopping(Request request) {
        return request.getConnector().getProtocolHandler() instanceof AbstractProtocol<?> protocol
                && protocol.isPaused();
    }

    @Override
    protected void report(Request request, Response response, @Nullable Throwable failure) {
        boolean answered =
                response.getStatus() < 400 || response.getContentWritten() > 0 || !response.setErrorReported();
        if (answered) {
            return;
        }
        ProblemType type = isStopping(request)
                ? ProblemType.STOPPING
                : response.getStatus() < 500 ? ProblemType.INVALID_INPUT : ProblemType.INTERNAL;
        String detail =
                type == ProblemType.INVALID_INPUT ? "The request line or a header is malformed." : type.explanation();
        if (type == ProblemType.STOPPING) {
            response.setStatus(type.status().value());
            response.setHeader("Retry-After", RETRY_SECONDS);
        }
        Problem problem = Problem.of(type, detail, "/", List.of());
        response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
        response.setHeader("X-Content-Type-Options", "nosniff");
        response.setHeader("Content-Security-Policy", "default-src 'none'; frame-ancestors 'none'");
        response.setHeader("Cache-Control", "no-store");
        try {
            response.getOutputStream().write(JSON.writeValueAsString(problem).getBytes(StandardCharsets.UTF_8));
            response.finishResponse();
        } catch (IOException e) {
            // The caller has gone; nobody is left to be told.
        }
    }
}
