package org.tunica.releases;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;

/** Reads the one thing of a kept report that is counted: the code of its reason. Its words may hold anything and are left. */
final class Feedback {
    private static final String ONLY_WORDS = "in words of their own";

    private Feedback() {}

    static Optional<String> reason(String body) {
        FieldReader report = new FieldReader(
                JsonText.parseRecord("feedback", body.getBytes(StandardCharsets.UTF_8)), "$", new Faults());
        return report.objects("feedback").orElseGet(List::of).stream()
                .map(entry -> entry.object("overrideReason"))
                .flatMap(Optional::stream)
                .findFirst()
                .map(why -> why.object("reason")
                        .flatMap(coding -> coding.text("code"))
                        .orElse(ONLY_WORDS));
    }
}
