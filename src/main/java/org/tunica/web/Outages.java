package org.tunica.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.Ordered;
import org.springframework.http.HttpStatus;
import org.springframework.web.filter.OncePerRequestFilter;
import org.tunica.store.Store;

/**
 * Answers 503 when what is kept cannot be reached before a request comes to whoever answers it: its session is read there, and
 * whether its token was used. Nobody is let in then. What the database says stands in the log alone.
 */
final class Outages extends OncePerRequestFilter implements Ordered {
    private static final Logger LOG = LoggerFactory.getLogger(Outages.class);

    private final Store store;

    Outages(Store store) {
        this.store = store;
    }

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
            String why = store.outage(e).orElse("");
            if (why.isEmpty()) {
                throw e;
            }
            LOG.error("a request could not be answered: {}", why);
            Refusals.write(
                    request,
                    response,
                    HttpStatus.SERVICE_UNAVAILABLE,
                    "what is kept cannot be reached now; nothing was done, ask again later");
        }
    }
}
