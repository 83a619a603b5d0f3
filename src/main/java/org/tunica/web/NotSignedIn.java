package org.tunica.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.AuthenticationEntryPoint;

/** Tells a program that it must sign in, and shows a person where. */
final class NotSignedIn implements AuthenticationEntryPoint {
    @Override
    public void commence(HttpServletRequest request, HttpServletResponse response, AuthenticationException refused)
            throws IOException {
        if (PagePaths.holds(request.getRequestURI())) {
            response.sendRedirect("/sign-in");
        } else {
            // a challenge is owed with this status; no scheme of the registry means a form
            response.setHeader(HttpHeaders.WWW_AUTHENTICATE, "Form location=\"/sign-in\"");
            Refusals.write(request, response, HttpStatus.UNAUTHORIZED, "sign in first; see /sign-in");
        }
    }
}
