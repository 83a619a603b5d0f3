package org.tunica.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.web.filter.OncePerRequestFilter;

/** Answers nobody over a network in the clear: only over TLS, through a trusted proxy that speaks it, or on this machine. */
@Order(Ordered.HIGHEST_PRECEDENCE)
final class ProtectedWay extends OncePerRequestFilter {
    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (request.isSecure() || Loopback.is(request.getRemoteAddr())) {
            chain.doFilter(request, response);
        } else {
            Refusals.write(request, response, HttpStatus.FORBIDDEN, "this way is not protected; use https");
        }
    }
}
