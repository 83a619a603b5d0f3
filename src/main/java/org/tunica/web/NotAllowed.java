package org.tunica.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.http.HttpStatus;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.authentication.InsufficientAuthenticationException;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.csrf.CsrfException;

/** Tells somebody that this is not open to them. */
final class NotAllowed implements AccessDeniedHandler {
    private final NotSignedIn notSignedIn = new NotSignedIn();

    @Override
    public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException refused)
            throws IOException {
        Authentication who = SecurityContextHolder.getContext().getAuthentication();
        if (PagePaths.holds(request.getRequestURI())) {
            response.sendError(HttpStatus.FORBIDDEN.value());
        } else if (who == null) {
            notSignedIn.commence(request, response, new InsufficientAuthenticationException("nobody", refused));
        } else {
            Refusals.write(request, response, HttpStatus.FORBIDDEN, says(refused));
        }
    }

    private static String says(AccessDeniedException refused) {
        return refused instanceof CsrfException
                ? "the token of the session is missing or another one; GET /api/session tells it"
                : "none of your roles may do this";
    }
}
