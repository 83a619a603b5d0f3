package org.tunica.couch;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** Scripts of these pages. Every page works without; they only save steps. */
@RestController
final class PageScripts {
    private final byte[] takeFile = shipped("take-file.js");

    /** Reads a file into the text that is sent. */
    @GetMapping("/cases/take-file.js")
    ResponseEntity<byte[]> takeFile() {
        return ResponseEntity.ok()
                .contentType(MediaType.valueOf("text/javascript;charset=UTF-8"))
                .body(takeFile);
    }

    private static byte[] shipped(String name) {
        try (InputStream in = PageScripts.class.getResourceAsStream("/web/" + name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its file web/" + name);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
