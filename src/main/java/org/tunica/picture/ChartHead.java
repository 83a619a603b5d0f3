package org.tunica.picture;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.tunica.plan.Advice;

/**
 * What the caller says over and under a chart.
 *
 * @param title what it is about
 * @param subtitle which cases it holds for
 * @param notes what a reader must know of those cases
 * @param release the rules and knowledge behind it
 */
public record ChartHead(String title, String subtitle, List<String> notes, Advice.Release release) {
    public ChartHead {
        notes = List.copyOf(notes);
    }

    /** What the chart itself finds, then what the caller says, the caution last. */
    List<String> notesAfter(List<String> findings) {
        return Stream.of(findings, notes, List.of(caution(release)))
                .flatMap(List::stream)
                .toList();
    }

    static String caution(Advice.Release release) {
        return release.state().word().toUpperCase(Locale.ROOT) + " knowledge " + release.version() + ". "
                + Advice.CAUTION;
    }
}
