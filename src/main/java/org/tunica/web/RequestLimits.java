package org.tunica.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletRequest;
import jakarta.servlet.ServletResponse;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.util.concurrent.Semaphore;
import org.springframework.core.Ordered;
import org.springframework.http.HttpStatus;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Keeps any one asker from taking the server from the others: how often an address may ask, how many requests are worked on
 * at once, and how many of these may be large. Questions about the health of the server always pass.
 */
final class RequestLimits extends OncePerRequestFilter implements Ordered {
    /** Each may take some hundred megabytes while it is read. */
    private static final int MOST_LARGE = 4;

    private static final int LARGE_BYTES = 1_000_000;
    private static final String HEALTH = "/server/health";

    private final Rates perAddress;
    private final Semaphore atOnce;
    private final Semaphore large = new Semaphore(MOST_LARGE);

    RequestLimits(Limits limits, Clock clock) {
        this.perAddress = new Rates(limits.perAddressPerMinute(), clock);
        this.atOnce = new Semaphore(limits.atOnce());
    }

    /** Before anything that costs more, such as the check of a signature. */
    @Override
    public int getOrder() {
        return Ordered.HIGHEST_PRECEDENCE + 100;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return request.getRequestURI().startsWith(HEALTH);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        long wait = perAddress.secondsToWait(request.getRemoteAddr());
        if (wait > 0) {
            tooMany(request, response, wait);
        } else if (isLarge(request)) {
            within(large, request, response, (asked, answer) -> within(atOnce, asked, answer, chain));
        } else {
            within(atOnce, request, response, chain);
        }
    }

    /** A body whose length is not told may be large. */
    private static boolean isLarge(HttpServletRequest request) {
        long length = request.getContentLengthLong();
        return length > LARGE_BYTES || (length < 0 && request.getHeader("Transfer-Encoding") != null);
    }

    private static void within(Semaphore places, ServletRequest request, ServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (!places.tryAcquire()) {
            tooMany((HttpServletRequest) request, (HttpServletResponse) response, 1);
            return;
        }
        try {
            chain.doFilter(request, response);
        } finally {
            places.release();
        }
    }

    static void tooMany(HttpServletRequest request, HttpServletResponse response, long seconds) throws IOException {
        response.setHeader("Retry-After", Long.toString(seconds));
        Refusals.write(request, response, HttpStatus.TOO_MANY_REQUESTS, "too much is asked; ask again later");
    }
}
