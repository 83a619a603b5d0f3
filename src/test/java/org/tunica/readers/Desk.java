package org.tunica.readers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tunica.web.Browser;

/** Somebody at the pages in one scenario: the page they look at, and what they put into its fields. Public because the steps are. */
public final class Desk {
    private static final int REFUSED = 422;
    private static final int SEE_OTHER = 303;
    private static final int MOST_LOOKS = 300;
    private static final String LOOKS_AGAIN = "Not everything is computed yet";

    private Browser browser;
    private String path = "/";
    private String page = "";
    private int status;
    private final List<Map.Entry<String, String>> put = new ArrayList<>();

    void comes(String name) throws Exception {
        browser = House.clinic().signedIn(name);
    }

    Browser browser() {
        return browser;
    }

    /** Opens a page, follows where it leads, and waits until all of it is computed. */
    void opens(String wanted) throws Exception {
        put.clear();
        path = wanted;
        HttpResponse<String> answer = browser.get(wanted);
        for (int looks = 0; looks < MOST_LOOKS && answer.body().contains(LOOKS_AGAIN); looks++) {
            answer = browser.get(wanted);
        }
        takes(answer);
    }

    /** Puts something into a field, to be sent with the next press. */
    void puts(String label, String text) {
        put.add(Map.entry(label, text));
    }

    /** Presses a button of the page with everything that was put into its form. */
    void presses(String button) throws Exception {
        PageForm form = PageForm.with(page, button);
        put.forEach(field -> {
            if (field.getValue().isEmpty()) {
                form.tick(field.getKey());
            } else {
                form.set(field.getKey(), field.getValue());
            }
        });
        put.clear();
        sends(form);
    }

    void sends(PageForm form) throws Exception {
        if (form.gets()) {
            opens(form.address());
        } else {
            takes(browser.send(form.action().isEmpty() ? path : form.action(), form.fields()));
        }
    }

    private void takes(HttpResponse<String> answer) throws Exception {
        status = answer.statusCode();
        page = answer.body();
        if (status == SEE_OTHER) {
            String to = answer.headers().firstValue("Location").orElseThrow();
            opens(to.replaceAll("#.*", ""));
            status = SEE_OTHER;
        }
    }

    void refused() {
        assertEquals(REFUSED, status, () -> words());
    }

    void done() {
        assertEquals(SEE_OTHER, status, () -> words());
    }

    String page() {
        return page;
    }

    /** The page as it is read. */
    String words() {
        return PageForm.words(page);
    }

    void says(String words) {
        assertTrue(words().contains(words), () -> "\"" + words + "\" in " + words());
    }
}
