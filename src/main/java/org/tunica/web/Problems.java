package org.tunica.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.TypeMismatchException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.context.request.WebRequest;
import org.springframework.web.servlet.mvc.method.annotation.ResponseEntityExceptionHandler;
import org.tunica.casefile.FaultyInput;
import org.tunica.frame.NotThere;
import org.tunica.store.OutOfDate;
import org.tunica.store.StoreUnavailable;

/** Everything that goes wrong, as RFC 9457 problem details: what the sender can mend is told with its place. */
@RestControllerAdvice
final class Problems extends ResponseEntityExceptionHandler {
    private static final Logger LOG = LoggerFactory.getLogger(Problems.class);

    @ExceptionHandler
    ProblemDetail faulty(FaultyInput faulty) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(
                HttpStatus.UNPROCESSABLE_CONTENT, "the " + faulty.what() + " cannot be used; nothing was done");
        List<Map<String, String>> faults = faulty.faults().stream()
                .map(fault -> Map.of("place", fault.place(), "says", fault.says()))
                .toList();
        problem.setProperty("faults", faults);
        return problem;
    }

    /** The framework's own words would hold what was sent, and how it is held here. */
    @Override
    protected @Nullable ResponseEntity<Object> handleTypeMismatch(
            TypeMismatchException mismatch, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
        String name = String.valueOf(mismatch.getPropertyName());
        ProblemDetail problem =
                ProblemDetail.forStatusAndDetail(status, "the request cannot be read; nothing was done");
        problem.setProperty(
                "faults",
                List.of(Map.of(
                        "place", name, "says", "cannot be read; give it once, as the page of this interface tells")));
        return handleExceptionInternal(mismatch, problem, headers, status, request);
    }

    @ExceptionHandler
    ProblemDetail unknown(ApiController.UnknownContract unknown) {
        return ProblemDetail.forStatusAndDetail(HttpStatus.NOT_FOUND, "there is no contract of that name");
    }

    @ExceptionHandler
    ProblemDetail notThere(NotThere missing) {
        return ProblemDetail.forStatusAndDetail(
                HttpStatus.NOT_FOUND, "there is no such " + missing.getMessage() + " here");
    }

    @ExceptionHandler
    ProblemDetail outOfDate(OutOfDate late) {
        return ProblemDetail.forStatusAndDetail(
                HttpStatus.PRECONDITION_FAILED, late.getMessage() + "; read it again, nothing was written");
    }

    @ExceptionHandler
    ProblemDetail unavailable(StoreUnavailable unavailable) {
        return ProblemDetail.forStatusAndDetail(
                HttpStatus.SERVICE_UNAVAILABLE, "what is kept cannot be reached now; " + told(unavailable));
    }

    /** A mistake of this program; its words may hold what was sent, so they are neither answered nor logged. */
    @ExceptionHandler
    ProblemDetail failed(Exception failed, HttpServletRequest request) {
        return ProblemDetail.forStatusAndDetail(HttpStatus.INTERNAL_SERVER_ERROR, "the server failed; " + told(failed));
    }

    private static String told(Exception failed) {
        String number = UUID.randomUUID().toString();
        LOG.error("request failed, number {}", number, failed);
        return "its log tells more under " + number;
    }
}
