package org.sunder.problem;

import io.swagger.v3.oas.annotations.Hidden;
import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Answers for failures that never reached a controller, such as a path that the container refused. */
@RestController
@Hidden
class FallbackErrors implements ErrorController {

    @RequestMapping("/error")
    ResponseEntity<Object> error(HttpServletRequest request) {
        Object code = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
        int status = code instanceof Integer number ? number : 404;
        ProblemType type = ProblemType.INTERNAL;
        if (status == 404) {
            type = ProblemType.NOT_FOUND;
        } else if (status == 408) {
            type = ProblemType.BROKEN_OFF;
        } else if (status < 500) {
            type = ProblemType.INVALID_INPUT;
        }
        Object asked = request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI);
        String instance = asked instanceof String uri ? uri : request.getRequestURI();
        return ProblemAdvice.answer(type, type.explanation(), List.of(), new HttpHeaders(), instance);
    }
}
