package org.tunica.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.http.HttpStatus;
import org.tunica.casefile.Fault;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Refusals in the form the asker reads: an OperationOutcome under {@code /fhir}, problem details (RFC 9457) elsewhere. */
final class Refusals {
    static final String FHIR_JSON = "application/fhir+json";
    private static final String PROBLEM_JSON = "application/problem+json";

    private Refusals() {}

    static boolean aboutRecords(HttpServletRequest request) {
        return request.getRequestURI().equals("/fhir")
                || request.getRequestURI().startsWith("/fhir/");
    }

    /** Writes one and ends the response. */
    static void write(HttpServletRequest request, HttpServletResponse response, HttpStatus status, String says)
            throws IOException {
        write(request, response, status, says, List.of());
    }

    static void write(
            HttpServletRequest request,
            HttpServletResponse response,
            HttpStatus status,
            String says,
            List<Fault> faults)
            throws IOException {
        if (response.isCommitted()) {
            return;
        }
        ObjectNode body = aboutRecords(request) ? outcome(status, says, faults) : problem(status, says, faults);
        byte[] bytes = body.toString().getBytes(StandardCharsets.UTF_8);
        response.resetBuffer();
        response.setStatus(status.value());
        response.setContentType(aboutRecords(request) ? FHIR_JSON : PROBLEM_JSON);
        response.setContentLength(bytes.length);
        response.getOutputStream().write(bytes);
        response.flushBuffer();
    }

    static ObjectNode problem(HttpStatus status, String says, List<Fault> faults) {
        ObjectNode problem = JsonNodeFactory.instance.objectNode();
        problem.put("title", status.getReasonPhrase())
                .put("status", status.value())
                .put("detail", says);
        if (!faults.isEmpty()) {
            ArrayNode list = problem.putArray("faults");
            faults.forEach(fault -> list.addObject().put("place", fault.place()).put("says", fault.says()));
        }
        return problem;
    }

    private static ObjectNode outcome(HttpStatus status, String says, List<Fault> faults) {
        ObjectNode outcome = JsonNodeFactory.instance.objectNode().put("resourceType", "OperationOutcome");
        ArrayNode issues = outcome.putArray("issue");
        Stream.concat(Stream.of(says), faults.stream().map(Fault::toString))
                .forEach(text -> issues.addObject()
                        .put("severity", "error")
                        .put("code", code(status))
                        .put("diagnostics", text));
        return outcome;
    }

    /** A code of the value set issue-type of FHIR R4. */
    private static String code(HttpStatus status) {
        return switch (status) {
            case UNAUTHORIZED -> "login";
            case FORBIDDEN -> "forbidden";
            case NOT_FOUND -> "not-found";
            case METHOD_NOT_ALLOWED, UNSUPPORTED_MEDIA_TYPE, NOT_ACCEPTABLE -> "not-supported";
            case CONTENT_TOO_LARGE -> "too-long";
            case TOO_MANY_REQUESTS -> "throttled";
            case INTERNAL_SERVER_ERROR -> "exception";
            case SERVICE_UNAVAILABLE -> "transient";
            default -> "invalid";
        };
    }
}
