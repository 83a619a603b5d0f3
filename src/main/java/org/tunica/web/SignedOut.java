package org.tunica.web;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.authentication.logout.LogoutSuccessHandler;
import org.tunica.store.Act;
import org.tunica.store.Actor;
import org.tunica.store.AuditTrail;
import org.tunica.store.Subject;

/** Tells the audit trail that somebody left, and leads on. */
final class SignedOut implements LogoutSuccessHandler {
    private final AuditTrail audit;
    private final LogoutSuccessHandler next;

    SignedOut(AuditTrail audit, LogoutSuccessHandler next) {
        this.audit = audit;
        this.next = next;
    }

    @Override
    public void onLogoutSuccess(HttpServletRequest request, HttpServletResponse response, @Nullable Authentication who)
            throws IOException, ServletException {
        if (who != null) {
            audit.note(new Actor(who.getName()), Act.SIGNED_OUT, new Subject("user", who.getName()));
        }
        next.onLogoutSuccess(request, response, who);
    }
}
