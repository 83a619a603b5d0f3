package org.tunica.frame;

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
public final class Pages {
    /** What pages are sent as. */
    public static final String HTML = "text/html;charset=UTF-8";

    /** Where the build puts the classes it makes of the templates. */
    private static final String TEMPLATES = "org.tunica.web";

    private final TemplateEngine engine =
            TemplateEngine.createPrecompiled(null, ContentType.Html, Pages.class.getClassLoader(), TEMPLATES);
    private final String release;

    Pages(Tunica tunica) {
        Advice.Release inUse = tunica.release();
        this.release = "Rules and knowledge " + inUse.version() + ", "
                + inUse.state().word().toUpperCase(Locale.ROOT);
    }

    /** A page that says something and leads on. */
    public String says(SaysPage page) {
        return written("says.jte", page);
    }

    /**
     * A page.
     *
     * @param template its file in {@code src/main/jte}
     * @param page what it shows
     */
    public String written(String template, Object page) {
        TemplateOutput output = new StringOutput();
        engine.render(template, page, output);
        return output.toString();
    }

    /** What stands on every page. */
    public Frame frame(String title, HttpServletRequest request) {
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
