package org.tunica.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;
import org.tunica.store.Users;

/**
 * Ends sessions that are too old, and those of people who left or have another password; gives the others the roles they
 * have now. So a change by the administrator counts from the next request on, on every server of the same store.
 */
final class StillWelcome extends OncePerRequestFilter {
    private static final String SINCE = "tunica.since";
    private static final String LAST_SEEN = "tunica.last-seen";

    private final Users users;
    private final SignInRules rules;
    private final Clock clock;

    StillWelcome(Users users, SignInRules rules, Clock clock) {
        this.users = users;
        this.rules = rules;
        this.clock = clock;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        HttpSession session = request.getSession(false);
        Authentication before = SecurityContextHolder.getContext().getAuthentication();
        if (session != null && before != null) {
            Optional<Authentication> now = inTime(session) ? current(before) : Optional.empty();
            SecurityContext context = SecurityContextHolder.createEmptyContext();
            now.ifPresent(context::setAuthentication);
            SecurityContextHolder.setContext(context);
            if (now.isEmpty()) {
                session.invalidate();
            }
        }
        chain.doFilter(request, response);
    }

    private boolean inTime(HttpSession session) {
        Instant now = clock.instant();
        Instant since = noted(session, SINCE, now);
        Instant lastSeen = noted(session, LAST_SEEN, now);
        session.setAttribute(LAST_SEEN, now);
        return now.isBefore(since.plus(rules.longest())) && now.isBefore(lastSeen.plus(rules.idle()));
    }

    private static Instant noted(HttpSession session, String what, Instant now) {
        if (session.getAttribute(what) instanceof Instant then) {
            return then;
        }
        session.setAttribute(what, now);
        return now;
    }

    private Optional<Authentication> current(Authentication before) {
        if (!(before.getPrincipal() instanceof LocalUser then)) {
            return Optional.of(before);
        }
        return users.find(then.name())
                .map(user -> LocalUser.of(user, clock.instant()))
                .filter(then::stillIs)
                .map(user -> UsernamePasswordAuthenticationToken.authenticated(user, null, user.getAuthorities()));
    }
}
