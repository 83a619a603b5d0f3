package org.tunica.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The style sheet of every page. */
record Look(byte[] css) {
    static Look shipped() {
        try (InputStream in = Look.class.getResourceAsStream("/web/look.css")) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its file web/look.css");
            }
            return new Look(in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
