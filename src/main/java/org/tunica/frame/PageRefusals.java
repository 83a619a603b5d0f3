package org.tunica.frame;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.MissingServletRequestParameterException;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.tunica.casefile.FaultyInput;
import org.tunica.cluster.EngineUnavailable;
import org.tunica.store.OutOfDate;

/** What controllers for people refuse, as a page that says why; a program would get a problem in JSON. */
@RestControllerAdvice(annotations = ForPeople.class)
@Order(Ordered.HIGHEST_PRECEDENCE)
public final class PageRefusals {
    private static final List<SaysPage.Way> TO_THE_START = List.of(new SaysPage.Way("/", "To the start"));

    private final Pages pages;

    PageRefusals(Pages pages) {
        this.pages = pages;
    }

    @ExceptionHandler
    ResponseEntity<String> notThere(NotThere missing, HttpServletRequest request) {
        return says(request, HttpStatus.NOT_FOUND, List.of("There is no such " + missing.getMessage() + " here."));
    }

    /** What is kept under other rules may hold what these do not know. */
    @ExceptionHandler
    ResponseEntity<String> faulty(FaultyInput faulty, HttpServletRequest request) {
        List<String> says = new ArrayList<>(List.of("The rules in force cannot use this " + faulty.what() + ":"));
        faulty.faults().forEach(fault -> says.add(fault.toString()));
        return says(request, HttpStatus.UNPROCESSABLE_CONTENT, says);
    }

    /** An address that somebody shortened or mistyped. */
    @ExceptionHandler
    ResponseEntity<String> lacking(MissingServletRequestParameterException lacking, HttpServletRequest request) {
        return says(request, HttpStatus.BAD_REQUEST, List.of("The address lacks " + lacking.getParameterName() + "."));
    }

    @ExceptionHandler
    ResponseEntity<String> unread(MethodArgumentTypeMismatchException unread, HttpServletRequest request) {
        return says(
                request,
                HttpStatus.BAD_REQUEST,
                List.of("What the address gives as " + unread.getName() + " cannot be read."));
    }

    @ExceptionHandler
    ResponseEntity<String> outOfDate(OutOfDate late, HttpServletRequest request) {
        return says(
                request,
                HttpStatus.CONFLICT,
                List.of("Somebody else changed this meanwhile; nothing was written. Open it again and look."));
    }

    /** Of a case nothing is lost: only what is like it cannot be told now. */
    @ExceptionHandler
    ResponseEntity<String> unavailable(EngineUnavailable gone, HttpServletRequest request) {
        return says(
                request,
                HttpStatus.SERVICE_UNAVAILABLE,
                List.of("Past cases cannot be searched now; try again soon, and tell the administrator if it lasts."));
    }

    private ResponseEntity<String> says(HttpServletRequest request, HttpStatus status, List<String> lines) {
        SaysPage page = new SaysPage(pages.frame("That did not work", request), lines, TO_THE_START);
        return ResponseEntity.status(status)
                .contentType(MediaType.parseMediaType(Pages.HTML))
                .body(pages.says(page));
    }
}
