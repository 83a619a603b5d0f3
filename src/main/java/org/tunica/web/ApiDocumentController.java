package org.tunica.web;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.Tunica;
import org.tunica.frame.Pages;
import tools.jackson.databind.node.ObjectNode;

/** Tells programs and their writers what can be asked over HTTP. */
@RestController
final class ApiDocumentController {
    private static final String HTML = "text/html;charset=UTF-8";

    private final Tunica tunica;
    private final Pages pages;
    private @Nullable ObjectNode document;

    ApiDocumentController(Tunica tunica, Pages pages) {
        this.tunica = tunica;
        this.pages = pages;
    }

    /** Made when it is first asked for; making the schemas takes longer than a start should. */
    private synchronized ObjectNode document() {
        ObjectNode made = document == null ? ApiDocument.of(tunica) : document;
        document = made;
        return made;
    }

    /** The document in OpenAPI 3.1. */
    @GetMapping("/api/openapi.json")
    ResponseEntity<String> json() {
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_JSON)
                .body(document().toPrettyString());
    }

    /** The same for people, in short. */
    @GetMapping(path = "/api", produces = HTML)
    String page(HttpServletRequest request) {
        return pages.written(
                "api.jte", new ApiPage(pages.frame("What programs can ask", request), ApiDocument.lines(document())));
    }
}
