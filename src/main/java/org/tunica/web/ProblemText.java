package org.tunica.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;

/** Problem details (RFC 9457) from places the framework's own writer does not reach. Their texts are fixed. */
final class ProblemText {
    private ProblemText() {}

    /** Whether whoever asks is a program, which wants no page. */
    static boolean wanted(HttpServletRequest request) {
        return !pages(request.getRequestURI());
    }

    static boolean pages(String path) {
        return path.equals("/")
                || path.startsWith("/sign")
                || path.startsWith("/my-")
                || path.startsWith("/first-start/")
                || path.startsWith("/password/")
                || path.startsWith("/login/")
                || path.startsWith("/oauth2/");
    }

    static void write(HttpServletResponse response, HttpStatus status, String detail) throws IOException {
        response.setStatus(status.value());
        response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
        response.getOutputStream().write(of(status, detail).getBytes(StandardCharsets.UTF_8));
    }

    static String of(HttpStatus status, String detail) {
        return "{\"title\":\"" + status.getReasonPhrase() + "\",\"status\":" + status.value() + ",\"detail\":\""
                + detail.replace("\\", "\\\\").replace("\"", "\\\"") + "\"}";
    }
}
