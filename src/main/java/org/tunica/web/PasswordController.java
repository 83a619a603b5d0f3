package org.tunica.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.function.Function;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.accounts.Accounts;
import org.tunica.accounts.FirstStart;
import org.tunica.accounts.LinkRefused;
import org.tunica.accounts.UserNames;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.frame.Pages;
import org.tunica.frame.SaysPage;
import org.tunica.store.OutOfDate;

/** Pages on which a password is set: by the link of the first start, by the link of an administrator, by oneself. */
@RestController
final class PasswordController {
    private static final String HTML = "text/html;charset=UTF-8";

    private final Pages pages;
    private final Accounts accounts;
    private final FirstStart firstStart;
    private final ServerSettings settings;

    PasswordController(Pages pages, Accounts accounts, FirstStart firstStart, ServerSettings settings) {
        this.pages = pages;
        this.accounts = accounts;
        this.firstStart = firstStart;
        this.settings = settings;
    }

    @GetMapping(path = "/first-start/{secret}", produces = HTML)
    ResponseEntity<String> first(@PathVariable String secret, HttpServletRequest request) {
        refuseUnless(settings.passwords() && firstStart.opens(secret));
        return form(firstPage(request, secret, ""), List.of());
    }

    @PostMapping(path = "/first-start/{secret}", produces = HTML)
    ResponseEntity<String> makeFirst(
            @PathVariable String secret,
            @RequestParam String name,
            @RequestParam String password,
            @RequestParam String again,
            HttpServletRequest request) {
        refuseUnless(settings.passwords());
        String typed = UserNames.typed(name);
        return tried(firstPage(request, secret, typed), password, again, () -> {
            firstStart.makeAdministrator(secret, typed, password);
            return done(request, "You are an administrator of this server. Sign in, and add the users.");
        });
    }

    @GetMapping(path = "/password/{name}/{secret}", produces = HTML)
    ResponseEntity<String> byLink(@PathVariable String name, @PathVariable String secret, HttpServletRequest request) {
        refuseUnless(settings.passwords() && accounts.opens(name, secret));
        return form(linkPage(request, name, secret), List.of());
    }

    @PostMapping(path = "/password/{name}/{secret}", produces = HTML)
    ResponseEntity<String> setByLink(
            @PathVariable String name,
            @PathVariable String secret,
            @RequestParam String password,
            @RequestParam String again,
            HttpServletRequest request) {
        refuseUnless(settings.passwords());
        return tried(linkPage(request, name, secret), password, again, () -> {
            accounts.setByLink(name, secret, password);
            return done(request, "Your password is set.");
        });
    }

    @GetMapping(path = "/my-password", produces = HTML)
    ResponseEntity<String> own(Authentication who, HttpServletRequest request) {
        refuseUnless(who.getPrincipal() instanceof LocalUser);
        return form(ownPage(request, who.getName()), List.of());
    }

    @PostMapping(path = "/my-password", produces = HTML)
    ResponseEntity<String> changeOwn(
            @RequestParam String old,
            @RequestParam String password,
            @RequestParam String again,
            Authentication who,
            HttpServletRequest request) {
        refuseUnless(who.getPrincipal() instanceof LocalUser);
        return tried(ownPage(request, who.getName()), password, again, () -> {
            accounts.changePassword(who.getName(), old, password);
            return done(request, "Your password is changed, and every session with the old one is over.");
        });
    }

    /** A link that leads nowhere; which of the reasons it is, is not told. */
    @ExceptionHandler
    ResponseEntity<String> refused(LinkRefused refused, HttpServletRequest request) {
        SaysPage page = new SaysPage(
                pages.frame("This link leads nowhere", request),
                List.of(
                        "It was used already, is too old, or was never given out.",
                        "The administrator can give you another one; before there is one, the next start of the server"
                                + " prints another one."),
                List.of(new SaysPage.Way("/sign-in", "Sign in")));
        return ResponseEntity.status(HttpStatus.NOT_FOUND)
                .contentType(MediaType.parseMediaType(HTML))
                .body(pages.says(page));
    }

    private static void refuseUnless(boolean open) {
        if (!open) {
            throw new LinkRefused();
        }
    }

    private interface Trying {
        ResponseEntity<String> go();
    }

    private ResponseEntity<String> tried(
            Function<List<String>, PasswordPage> page, String password, String again, Trying trying) {
        if (!password.equals(again)) {
            return form(page, List.of("The two new passwords differ."));
        }
        try {
            return trying.go();
        } catch (OutOfDate e) {
            return form(page, List.of("There is a user of that name already."));
        } catch (FaultyInput e) {
            return form(
                    page, e.faults().stream().map(PasswordController::sentence).toList());
        }
    }

    private static String sentence(Fault fault) {
        return "The " + fault.place() + " " + fault.says() + ".";
    }

    private ResponseEntity<String> form(Function<List<String>, PasswordPage> page, List<String> faults) {
        HttpStatus status = faults.isEmpty() ? HttpStatus.OK : HttpStatus.UNPROCESSABLE_CONTENT;
        return ResponseEntity.status(status).body(pages.written("password.jte", page.apply(faults)));
    }

    private ResponseEntity<String> done(HttpServletRequest request, String says) {
        return ResponseEntity.ok(pages.says(new SaysPage(
                pages.frame("Done", request), List.of(says), List.of(new SaysPage.Way("/sign-in", "Sign in")))));
    }

    private Function<List<String>, PasswordPage> firstPage(HttpServletRequest request, String secret, String name) {
        return faults -> new PasswordPage(
                pages.frame("Become administrator", request),
                "Whoever fills in this page becomes an administrator of this server, who adds users and sees no case.",
                "/first-start/" + secret,
                PasswordPage.Asks.NAME,
                name,
                faults,
                "Become administrator");
    }

    private Function<List<String>, PasswordPage> linkPage(HttpServletRequest request, String name, String secret) {
        return faults -> new PasswordPage(
                pages.frame("Set a password", request),
                "This sets the password of user " + name + ".",
                "/password/" + name + "/" + secret,
                PasswordPage.Asks.NOTHING,
                name,
                faults,
                "Set password");
    }

    private Function<List<String>, PasswordPage> ownPage(HttpServletRequest request, String name) {
        return faults -> new PasswordPage(
                pages.frame("Change my password", request),
                "Every session with the password in use ends.",
                "/my-password",
                PasswordPage.Asks.OLD_PASSWORD,
                name,
                faults,
                "Change password");
    }
}
