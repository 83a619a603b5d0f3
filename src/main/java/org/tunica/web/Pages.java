package org.tunica.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.TemplateOutput;
import gg.jte.output.StringOutput;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Locale;
import java.util.Optional;
import org.springframework.security.authentication.AnonymousAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.csrf.CsrfToken;
import org.tunica.Tunica;
import org.tunica.plan.Advice;

/** Writes pages from the templates, which were made into classes when the program was built. */
final class Pages {
    private final TemplateEngine engine = TemplateEngine.createPrecompiled(
            null, ContentType.Html, Pages.class.getClassLoader(), Pages.class.getPackageName());
    private final String release;

    Pages(Tunica tunica) {
        Advice.Release inUse = tunica.release();
        this.release = "Rules and knowledge " + inUse.version() + ", "
                + inUse.state().word().toUpperCase(Locale.ROOT);
    }

    String signIn(SignInPage page) {
        return written("sign-in.jte", page);
    }

    String password(PasswordPage page) {
        return written("password.jte", page);
    }

    String says(SaysPage page) {
        return written("says.jte", page);
    }

    String start(StartPage page) {
        return written("start.jte", page);
    }

    String api(ApiPage page) {
        return written("api.jte", page);
    }

    String cases(CasesPage page) {
        return written("cases.jte", page);
    }

    String advice(CasePage page) {
        return written("advice.jte", page);
    }

    private String written(String template, Object page) {
        TemplateOutput output = new StringOutput();
        engine.render(template, page, output);
        return output.toString();
    }

    Frame frame(String title, HttpServletRequest request) {
        return new Frame(title, csrf(request), signedIn(), Advice.CAUTION, release);
    }

    private static Frame.Csrf csrf(HttpServletRequest request) {
        return request.getAttribute(CsrfToken.class.getName()) instanceof CsrfToken token
                ? new Frame.Csrf(token.getParameterName(), token.getToken())
                : new Frame.Csrf("none", "");
    }

    private static Optional<String> signedIn() {
        Authentication who = SecurityContextHolder.getContext().getAuthentication();
        return who == null || who instanceof AnonymousAuthenticationToken
                ? Optional.empty()
                : Optional.of(who.getName());
    }
}
