package org.tunica.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;
import org.tunica.callers.TokenCheck;
import org.tunica.callers.TokenRefused;

/**
 * Lets in the record system whose token a call carries. Who is not let in goes on as nobody and is refused further down, with
 * the same bytes whatever the reason; the reason is logged, the token never.
 */
final class SignedCalls extends OncePerRequestFilter {
    private static final Logger LOG = LoggerFactory.getLogger(SignedCalls.class);
    private static final String BEARER = "bearer ";

    private final TokenCheck tokens;
    private final String baseAddress;
    private final Rates rates;

    SignedCalls(TokenCheck tokens, String baseAddress, Rates rates) {
        this.tokens = tokens;
        this.baseAddress = baseAddress;
        this.rates = rates;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Optional<String> caller = token(request).flatMap(token -> caller(token, request));
        long wait = caller.map(rates::secondsToWait).orElse(0L);
        if (wait > 0) {
            RequestLimits.tooMany(request, response, wait);
            return;
        }
        caller.ifPresent(SignedCalls::letIn);
        try {
            chain.doFilter(request, response);
        } finally {
            SecurityContextHolder.clearContext();
        }
    }

    /** The one token in the one header; a token anywhere else is none. */
    private static Optional<String> token(HttpServletRequest request) {
        List<String> headers = Collections.list(request.getHeaders("Authorization"));
        return headers.size() == 1 && headers.get(0).toLowerCase(Locale.ROOT).startsWith(BEARER)
                ? Optional.of(headers.get(0).substring(BEARER.length()))
                : Optional.empty();
    }

    private Optional<String> caller(String token, HttpServletRequest request) {
        try {
            return Optional.of(
                    tokens.check(token, baseAddress + request.getRequestURI()).name());
        } catch (TokenRefused e) {
            LOG.info("A call was not let in: {}", e.getMessage());
            return Optional.empty();
        }
    }

    /** Goes on as a caller of this name. */
    static void letIn(String caller) {
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(UsernamePasswordAuthenticationToken.authenticated(caller, null, List.of()));
        SecurityContextHolder.setContext(context);
    }
}
