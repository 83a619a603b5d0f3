package org.tunica.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.core.Ordered;
import org.springframework.http.HttpStatus;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.web.ErrorResponse;
import org.springframework.web.servlet.HandlerExceptionResolver;
import org.springframework.web.servlet.ModelAndView;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/** What goes wrong with calls of record systems: malformed is 400 here, as their standard's users expect. */
final class CallProblems implements HandlerExceptionResolver, Ordered {
    @Override
    public int getOrder() {
        return HIGHEST_PRECEDENCE;
    }

    @Override
    public @Nullable ModelAndView resolveException(
            HttpServletRequest request, HttpServletResponse response, @Nullable Object handler, Exception problem) {
        boolean aboutHooks = request.getRequestURI().startsWith("/cds-services");
        if (!aboutHooks && !Refusals.aboutRecords(request)) {
            return null;
        }
        try {
            return answered(request, response, problem);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static @Nullable ModelAndView answered(
            HttpServletRequest request, HttpServletResponse response, Exception problem) throws IOException {
        if (problem instanceof FaultyInput faulty) {
            refuse(
                    request,
                    response,
                    HttpStatus.BAD_REQUEST,
                    "what was sent cannot be used; nothing was done",
                    faulty.faults());
        } else if (problem instanceof ErrorResponse told && told.getStatusCode().is4xxClientError()) {
            told.getHeaders().forEach((name, values) -> values.forEach(value -> response.addHeader(name, value)));
            HttpStatus status = HttpStatus.valueOf(told.getStatusCode().value());
            refuse(request, response, status, says(status), List.of());
        } else if (problem instanceof HttpMessageNotReadableException) {
            refuse(request, response, HttpStatus.BAD_REQUEST, "the body cannot be read", List.of());
        } else {
            return null;
        }
        return new ModelAndView();
    }

    private static void refuse(
            HttpServletRequest request,
            HttpServletResponse response,
            HttpStatus status,
            String says,
            List<Fault> faults)
            throws IOException {
        Refusals.write(request, response, status, says, faults);
    }

    private static String says(HttpStatus status) {
        return switch (status) {
            case NOT_FOUND -> "there is nothing of that name";
            case METHOD_NOT_ALLOWED -> "this is not asked that way";
            case UNSUPPORTED_MEDIA_TYPE -> "only JSON is read";
            case CONTENT_TOO_LARGE -> "the body is larger than what is read";
            default -> "this cannot be answered";
        };
    }
}
