package org.tunica.office;

import java.net.URI;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.frame.Pages;

/** How a form is answered: on to a page, or back with what was typed. */
final class Answers {
    private Answers() {}

    static ResponseEntity<String> seeOther(String path) {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create(path))
                .build();
    }

    static ResponseEntity<String> refused(HttpStatus status, String page) {
        return ResponseEntity.status(status)
                .contentType(MediaType.parseMediaType(Pages.HTML))
                .body(page);
    }

    /** Every fault with its place, one a line. */
    static List<String> lines(FaultyInput faulty) {
        return faulty.faults().stream().map(Fault::toString).toList();
    }
}
