package org.sunder.problem;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** Writes a problem document where no controller was reached. */
@Component
public class ProblemWriter {

    private final JsonMapper json;

    ProblemWriter(JsonMapper json) {
        this.json = json;
    }

    /** Answers with a problem; headers set before stay. */
    public void write(HttpServletRequest request, HttpServletResponse response, ProblemType type, String detail)
            throws IOException {
        write(request, response, type, detail, List.of());
    }

    /** Answers with a problem that names what is wrong; headers set before stay. */
    void write(
            HttpServletRequest request,
            HttpServletResponse response,
            ProblemType type,
            String detail,
            List<Fault> faults)
            throws IOException {
        response.setStatus(type.status().value());
        response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
        json.writeValue(response.getOutputStream(), Problem.of(type, detail, request.getRequestURI(), faults));
    }

    /** Answers with a problem in the words of its type. */
    public void write(HttpServletRequest request, HttpServletResponse response, ProblemType type) throws IOException {
        write(request, response, type, type.explanation());
    }
}
