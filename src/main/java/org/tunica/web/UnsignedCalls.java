package org.tunica.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.InetAddress;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/** Lets in whoever calls from this machine, for tests alone. */
final class UnsignedCalls extends OncePerRequestFilter {
    /** What such a caller is called in the audit trail. */
    static final String NAME = "unsigned";

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (InetAddress.getByName(request.getRemoteAddr()).isLoopbackAddress()) {
            SignedCalls.letIn(NAME);
        }
        try {
            chain.doFilter(request, response);
        } finally {
            SecurityContextHolder.clearContext();
        }
    }
}
