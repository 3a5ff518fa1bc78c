package org.sunder.problem;

import jakarta.servlet.http.HttpServletRequest;
import java.io.EOFException;
import java.util.ArrayList;
import java.util.List;
import org.apache.catalina.connector.ClientAbortException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.TypeMismatchException;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.transaction.CannotCreateTransactionException;
import org.springframework.validation.FieldError;
import org.springframework.web.bind.MethodArgumentNotValidException;
import org.springframework.web.bind.MissingRequestHeaderException;
import org.springframework.web.bind.MissingServletRequestParameterException;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.context.request.ServletWebRequest;
import org.springframework.web.context.request.WebRequest;
import org.springframework.web.context.request.async.AsyncRequestNotUsableException;
import org.springframework.web.method.annotation.HandlerMethodValidationException;
import org.springframework.web.servlet.mvc.method.annotation.ResponseEntityExceptionHandler;
import tools.jackson.core.JacksonException;
import tools.jackson.core.exc.InputCoercionException;
import tools.jackson.databind.DatabindException;

/** The one place where a failure becomes an answer. */
@RestControllerAdvice
@Order(Ordered.HIGHEST_PRECEDENCE)
class ProblemAdvice extends ResponseEntityExceptionHandler {

    private static final Logger LOG = LoggerFactory.getLogger(ProblemAdvice.class);
    private static final String RETRY_SECONDS = "5";

    @ExceptionHandler(ProblemException.class)
    ResponseEntity<Object> problem(ProblemException e, HttpServletRequest request) {
        HttpHeaders headers = new HttpHeaders();
        if (e.type() == ProblemType.STORAGE_UNAVAILABLE || e.type() == ProblemType.TOO_MANY_REQUESTS) {
            headers.set(HttpHeaders.RETRY_AFTER, RETRY_SECONDS);
        }
        return answer(e.type(), String.valueOf(e.getMessage()), e.faults(), headers, request);
    }

    @ExceptionHandler(OptimisticLockingFailureException.class)
    ResponseEntity<Object> overtaken(OptimisticLockingFailureException e, HttpServletRequest request) {
        String detail = "Another change was stored first; this one was not.";
        return answer(ProblemType.VERSION_MISMATCH, detail, List.of(), new HttpHeaders(), request);
    }

    @ExceptionHandler({CannotCreateTransactionException.class, DataAccessResourceFailureException.class})
    ResponseEntity<Object> storage(Exception e, HttpServletRequest request) {
        LOG.error("The database does not answer", e);
        HttpHeaders headers = new HttpHeaders();
        headers.set(HttpHeaders.RETRY_AFTER, RETRY_SECONDS);
        return answer(ProblemType.STORAGE_UNAVAILABLE, whetherStored(e), List.of(), headers, request);
    }

    /** Without a transaction nothing can have been stored; where one broke, it may have been committed before the break. */
    private static String whetherStored(Exception e) {
        return e instanceof CannotCreateTransactionException ? "Nothing was stored." : StorageUncertain.DETAIL;
    }

    @ExceptionHandler(Exception.class)
    @Nullable ResponseEntity<Object> unforeseen(Exception e, HttpServletRequest request) {
        // Before the caller is asked about: a database that hangs up ends in an EOFException too.
        if (SqlFailures.isUnavailable(e)) {
            return storage(e, request);
        }
        if (callerGone(e)) {
            return null;
        }
        if (BodyLimit.exceeded(e)) {
            return answer(ProblemType.BODY_TOO_LARGE, BodyLimit.DETAIL, List.of(), new HttpHeaders(), request);
        }
        if (SqlFailures.isHeld(e)) {
            HttpHeaders headers = new HttpHeaders();
            headers.set(HttpHeaders.RETRY_AFTER, RETRY_SECONDS);
            String detail = "Another change goes on and holds what this one needs. Nothing was stored.";
            return answer(ProblemType.STORAGE_UNAVAILABLE, detail, List.of(), headers, request);
        }
        if (SqlFailures.isConflict(e)) {
            String detail = "Another change was stored first; this one was not.";
            return answer(ProblemType.CONFLICT, detail, List.of(), new HttpHeaders(), request);
        }
        LOG.error("Unforeseen failure", e);
        return answer(ProblemType.INTERNAL, "The request could not be handled.", List.of(), new HttpHeaders(), request);
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleHttpMessageNotReadable(
            HttpMessageNotReadableException e, HttpHeaders headers, HttpStatusCode status, WebRequest web) {
        HttpServletRequest request = servlet(web);
        if (callerGone(e)) {
            return null;
        }
        if (BodyLimit.exceeded(e)) {
            return answer(ProblemType.BODY_TOO_LARGE, BodyLimit.DETAIL, List.of(), headers, request);
        }
        List<Fault> faults = new ArrayList<>(InputFaults.current());
        if (e.getCause() instanceof DatabindException bind && !bind.getPath().isEmpty()) {
            faults.add(new Fault(
                    JsonFaults.pointer(bind), JsonFaults.words(bind), "wrong-form", JsonFaults.allowed(bind), null));
        }
        if (e.getCause() instanceof InputCoercionException tooLarge) {
            faults.add(JsonFaults.tooLarge(tooLarge));
        }
        if (!faults.isEmpty()) {
            return answer(ProblemType.INVALID_INPUT, summary(faults), faults, headers, request);
        }
        String detail = e.getCause() instanceof JacksonException json
                ? JsonFaults.words(json)
                : "A JSON object is needed as the body.";
        return answer(ProblemType.MALFORMED_JSON, detail, List.of(), headers, request);
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleMethodArgumentNotValid(
            MethodArgumentNotValidException e, HttpHeaders headers, HttpStatusCode status, WebRequest web) {
        List<Fault> faults = e.getBindingResult().getFieldErrors().stream()
                .map(ProblemAdvice::fault)
                .toList();
        return answer(ProblemType.INVALID_INPUT, summary(faults), faults, headers, servlet(web));
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleHandlerMethodValidationException(
            HandlerMethodValidationException e, HttpHeaders headers, HttpStatusCode status, WebRequest web) {
        List<Fault> faults = new ArrayList<>();
        e.getParameterValidationResults()
                .forEach(result -> result.getResolvableErrors()
                        .forEach(error -> faults.add(new Fault(
                                String.valueOf(result.getMethodParameter().getParameterName()),
                                String.valueOf(error.getDefaultMessage()),
                                "out-of-range",
                                error.getDefaultMessage(),
                                String.valueOf(result.getArgument())))));
        return answer(ProblemType.INVALID_INPUT, summary(faults), faults, headers, servlet(web));
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleTypeMismatch(
            TypeMismatchException e, HttpHeaders headers, HttpStatusCode status, WebRequest web) {
        String name = String.valueOf(e.getPropertyName());
        String allowed = AllowedForms.of(e.getRequiredType());
        String detail = name + " must be " + allowed + ".";
        Fault fault = new Fault(name, detail, "wrong-form", allowed, String.valueOf(e.getValue()));
        return answer(ProblemType.INVALID_INPUT, detail, List.of(fault), headers, servlet(web));
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleExceptionInternal(
            Exception e, @Nullable Object body, HttpHeaders headers, HttpStatusCode status, WebRequest web) {
        ProblemType type = switch (HttpStatus.valueOf(status.value())) {
            case NOT_FOUND -> ProblemType.NOT_FOUND;
            case METHOD_NOT_ALLOWED -> ProblemType.METHOD_NOT_ALLOWED;
            case NOT_ACCEPTABLE -> ProblemType.NOT_ACCEPTABLE;
            case UNSUPPORTED_MEDIA_TYPE -> ProblemType.UNSUPPORTED_MEDIA_TYPE;
            case CONTENT_TOO_LARGE -> ProblemType.BODY_TOO_LARGE;
            case BAD_REQUEST -> ProblemType.INVALID_INPUT;
            default -> ProblemType.INTERNAL;
        };
        if (type == ProblemType.INTERNAL) {
            if (callerGone(e)) {
                return null;
            }
            LOG.error("Unforeseen failure", e);
        }
        List<Fault> faults = missing(e);
        String detail = faults.isEmpty() ? type.explanation() : summary(faults);
        return answer(type, detail, faults, headers, servlet(web));
    }

    /** Whether the caller hung up: nobody is left to be told, and nothing is wrong here. */
    private static boolean callerGone(Throwable failure) {
        for (Throwable t = failure; t != null; t = t.getCause()) {
            if (t instanceof ClientAbortException
                    || t instanceof EOFException
                    || t instanceof AsyncRequestNotUsableException) {
                LOG.debug("The caller hung up", failure);
                return true;
            }
        }
        return false;
    }

    static ResponseEntity<Object> answer(
            ProblemType type, String detail, List<Fault> faults, HttpHeaders headers, HttpServletRequest request) {
        return answer(type, detail, faults, headers, request.getRequestURI());
    }

    static ResponseEntity<Object> answer(
            ProblemType type, String detail, List<Fault> faults, HttpHeaders headers, String instance) {
        HttpHeaders all = new HttpHeaders();
        all.putAll(headers);
        all.setContentType(MediaType.APPLICATION_PROBLEM_JSON);
        return new ResponseEntity<>(Problem.of(type, detail, instance, faults), all, type.status());
    }

    static String summary(List<Fault> faults) {
        String first = faults.get(0).pointer() + ": " + faults.get(0).detail();
        return faults.size() == 1 ? first : first + " (and " + (faults.size() - 1) + " more)";
    }

    private static List<Fault> missing(Exception e) {
        String name = null;
        if (e instanceof MissingServletRequestParameterException parameter) {
            name = parameter.getParameterName();
        } else if (e instanceof MissingRequestHeaderException header) {
            name = header.getHeaderName();
        }
        return name == null ? List.of() : List.of(new Fault(name, name + " is missing", "missing", null, null));
    }

    private static Fault fault(FieldError error) {
        if (error.contains(jakarta.validation.ConstraintViolation.class)) {
            return Violations.fault(error.unwrap(jakarta.validation.ConstraintViolation.class));
        }
        return new Fault(error.getField(), String.valueOf(error.getDefaultMessage()), "not-allowed", null, null);
    }

    private static HttpServletRequest servlet(WebRequest web) {
        return ((ServletWebRequest) web).getRequest();
    }
}
