package org.tunica.web;

import java.util.List;
import java.util.Optional;
import org.springframework.http.MediaType;
import org.springframework.security.authentication.AnonymousAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** Who is signed in, and the token that every change must carry. */
@RestController
final class SessionController {
    /**
     * A session.
     *
     * @param name of whoever is signed in
     * @param csrfHeader the header that every request but a GET must carry
     * @param csrfToken its value
     */
    record Session(Optional<String> name, List<String> roles, String csrfHeader, String csrfToken) {}

    @GetMapping(path = "/api/session", produces = MediaType.APPLICATION_JSON_VALUE)
    Session session(CsrfToken csrf) {
        Authentication who = SecurityContextHolder.getContext().getAuthentication();
        if (who == null || who instanceof AnonymousAuthenticationToken) {
            return new Session(Optional.empty(), List.of(), csrf.getHeaderName(), csrf.getToken());
        }
        List<String> roles = who.getAuthorities().stream()
                .map(GrantedAuthority::getAuthority)
                .toList();
        return new Session(Optional.of(who.getName()), roles, csrf.getHeaderName(), csrf.getToken());
    }
}
