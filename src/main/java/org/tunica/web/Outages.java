package org.tunica.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.Ordered;
import org.springframework.http.HttpStatus;
import org.springframework.web.filter.OncePerRequestFilter;
import org.tunica.plan.Advice;
import org.tunica.store.Store;

/**
 * Answers 503 when what is kept cannot be reached before a request comes to whoever answers it: its session is read there, and
 * whether its token was used. Nobody is let in then. What the database says stands in the log alone.
 */
final class Outages extends OncePerRequestFilter implements Ordered {
    private static final Logger LOG = LoggerFactory.getLogger(Outages.class);
    private static final String SAYS = "what is kept cannot be reached now; nothing was done, ask again later";

    /** No template of the pages: these ask who is signed in. */
    private static final String PAGE = """
            <!doctype html>
            <html lang="en">
            <head><title>Not now</title><meta name="viewport" content="width=device-width, initial-scale=1"></head>
            <body><main><h1>Not now</h1><p>Your request cannot be answered: %s.</p><p>%s</p></main></body>
            </html>
            """;

    /** Around all others, that of the sessions too. */
    @Override
    public int getOrder() {
        return Ordered.HIGHEST_PRECEDENCE;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        try {
            chain.doFilter(request, response);
        } catch (ServletException | RuntimeException e) {
            if (!Store.isOutage(e)) {
                throw e;
            }
            LOG.error("a request could not be answered, as what is kept cannot be reached", e);
            tell(request, response);
        }
    }

    private static void tell(HttpServletRequest request, HttpServletResponse response) throws IOException {
        boolean person = String.valueOf(request.getHeader("Accept")).contains("text/html");
        if (!person || response.isCommitted()) {
            Refusals.write(request, response, HttpStatus.SERVICE_UNAVAILABLE, SAYS);
            return;
        }
        byte[] page = PAGE.formatted(SAYS, Advice.CAUTION).getBytes(StandardCharsets.UTF_8);
        response.resetBuffer();
        response.setStatus(HttpStatus.SERVICE_UNAVAILABLE.value());
        response.setContentType("text/html;charset=UTF-8");
        response.setContentLength(page.length);
        response.getOutputStream().write(page);
        response.flushBuffer();
    }
}
