package org.tunica.web;

import java.util.List;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.servlet.mvc.method.annotation.ResponseEntityExceptionHandler;
import org.tunica.casefile.FaultyInput;

/** Everything that goes wrong, as RFC 9457 problem details: what the sender can mend is told with its place. */
@RestControllerAdvice
final class Problems extends ResponseEntityExceptionHandler {
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

    @ExceptionHandler
    ProblemDetail unknown(ApiController.UnknownContract unknown) {
        return ProblemDetail.forStatusAndDetail(HttpStatus.NOT_FOUND, "there is no contract of that name");
    }
}
