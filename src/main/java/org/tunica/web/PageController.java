package org.tunica.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.frame.Pages;
import org.tunica.frame.SaysPage;

/** Pages around signing in. */
@RestController
final class PageController {
    private static final String HTML = "text/html;charset=UTF-8";
    private static final String REFUSED =
            "The name or the password is not right, or the account is locked for a while, or it is not let in here.";

    private final Pages pages;
    private final ServerSettings settings;
    private final Look look = Look.shipped();

    PageController(Pages pages, ServerSettings settings) {
        this.pages = pages;
        this.settings = settings;
    }

    /** What is here. */
    @GetMapping(path = "/", produces = HTML)
    String start(HttpServletRequest request, Authentication who) {
        Set<String> roles = new TreeSet<>();
        for (GrantedAuthority authority : who.getAuthorities()) {
            roles.add(authority.getAuthority());
        }
        roles.retainAll(Permission.ROLES);
        boolean local = who.getPrincipal() instanceof LocalUser;
        return pages.written(
                "start.jte",
                new StartPage(
                        pages.frame("What is here", request),
                        List.copyOf(roles),
                        Places.openTo(roles),
                        Permission.opens(HttpMethod.GET, "/cases/**", roles),
                        Permission.opens(HttpMethod.GET, "/governance/**", roles),
                        local));
    }

    @GetMapping(path = "/sign-in", produces = HTML)
    String signIn(HttpServletRequest request, @RequestParam Optional<String> refused) {
        List<String> faults = refused.map(any -> List.of(REFUSED)).orElse(List.of());
        return pages.written(
                "sign-in.jte",
                new SignInPage(
                        pages.frame("Sign in", request),
                        faults,
                        settings.passwords(),
                        settings.hospital().isPresent()));
    }

    @GetMapping(path = "/signed-out", produces = HTML)
    String signedOut(HttpServletRequest request) {
        return pages.says(new SaysPage(
                pages.frame("Signed out", request),
                List.of("You are signed out."),
                List.of(new SaysPage.Way("/sign-in", "Sign in again"))));
    }

    /** The look of every page. */
    @GetMapping("/look.css")
    ResponseEntity<byte[]> look() {
        return ResponseEntity.ok()
                .contentType(MediaType.valueOf("text/css;charset=UTF-8"))
                .body(look.css());
    }
}
