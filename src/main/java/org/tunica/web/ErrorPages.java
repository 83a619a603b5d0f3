package org.tunica.web;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.frame.Pages;
import org.tunica.frame.SaysPage;

/** What is answered when a request went wrong before or beside the controllers: by its status alone. */
@RestController
final class ErrorPages implements ErrorController {
    private final Pages pages;

    ErrorPages(Pages pages) {
        this.pages = pages;
    }

    @RequestMapping("${server.error.path:/error}")
    ResponseEntity<byte[]> error(HttpServletRequest request) {
        HttpStatus status = status(request);
        Object path = request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI);
        return PagePaths.holds(String.valueOf(path)) ? page(status, request) : problem(status);
    }

    private static HttpStatus status(HttpServletRequest request) {
        Object code = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
        HttpStatus known = code instanceof Integer number ? HttpStatus.resolve(number) : null;
        return known == null ? HttpStatus.NOT_FOUND : known;
    }

    private static ResponseEntity<byte[]> problem(HttpStatus status) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .body(utf8(Refusals.problem(status, says(status), List.of()).toString()));
    }

    private ResponseEntity<byte[]> page(HttpStatus status, HttpServletRequest request) {
        return ResponseEntity.status(status)
                .contentType(new MediaType(MediaType.TEXT_HTML, StandardCharsets.UTF_8))
                .body(utf8(pages.says(new SaysPage(
                        pages.frame("That did not work", request),
                        List.of(says(status)),
                        List.of(new SaysPage.Way("/", "To the start"))))));
    }

    private static String says(HttpStatus status) {
        return switch (status) {
            case NOT_FOUND -> "There is nothing here.";
            case FORBIDDEN -> "This is not open to you, or the page was open too long; go back to the start.";
            case CONTENT_TOO_LARGE -> "That is larger than anything that is read here.";
            default ->
                status.is5xxServerError()
                        ? "The server failed. Nothing of the last step was kept."
                        : "The request could not be understood.";
        };
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
