package org.tunica.couch;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.tunica.frame.Frame;
import org.tunica.knowledge.Knowledge;
import org.tunica.outcomes.OutcomeNumbers;
import org.tunica.pages.NumberNote;
import org.tunica.plan.SimilarAdvice;
import org.tunica.similar.SimilarCases;
import org.tunica.similar.Similarity;
import org.tunica.treatment.ClosureDefinition;
import org.tunica.wording.SettingWords;

/**
 * Past segments like one of a case.
 *
 * @param title of the segment
 * @param says what was searched and what it is worth, line by line
 * @param nearest the most alike first
 * @param happened what happened to the nearest, in words
 * @param notes help to the numbers by which that is counted
 */
public record SimilarPage(
        Frame frame,
        String caseRef,
        String title,
        List<String> says,
        List<Past> nearest,
        List<String> happened,
        List<NumberNote> notes) {
    private static final List<String> COUNTED_BY = Stream.of(
                    OutcomeNumbers.IDS.stream().filter(id -> !id.startsWith("audit.")),
                    Stream.of(ClosureDefinition.values()).map(ClosureDefinition::limitId),
                    Similarity.IDS.stream())
            .flatMap(ids -> ids)
            .toList();

    /**
     * A past segment.
     *
     * @param alike how much, in words
     * @param went what was done and how it went, line by line
     * @param why attribute by attribute, its head first
     */
    public record Past(String title, boolean invented, String alike, List<String> went, List<List<String>> why) {}

    public SimilarPage {
        says = List.copyOf(says);
        nearest = List.copyOf(nearest);
        happened = List.copyOf(happened);
        notes = List.copyOf(notes);
    }

    /** Nothing to show but a reason. */
    static SimilarPage nothing(Frame frame, String caseRef, String title, String says) {
        return new SimilarPage(frame, caseRef, title, List.of(says), List.of(), List.of(), List.of());
    }

    static SimilarPage of(Frame frame, String title, SimilarCases found, Knowledge knowledge) {
        SimilarAdvice similar = found.segments().get(0).similar();
        List<String> says = new ArrayList<>(List.of(found.base(), similar.says()));
        says.add(String.format(
                Locale.ROOT,
                "%,d past segments were looked at; of %,d too little is known in common, and they are not listed.",
                similar.considered(),
                similar.tooLittleKnown()));
        List<Past> nearest =
                similar.nearest().stream().map(one -> past(one, knowledge)).toList();
        return new SimilarPage(
                frame,
                found.caseRef().orElse(""),
                title,
                says,
                nearest,
                similar.happened(),
                NumberNote.of(COUNTED_BY, knowledge));
    }

    private static Past past(SimilarAdvice.Nearest one, Knowledge knowledge) {
        String title = one.side().word().toUpperCase(Locale.ROOT) + " "
                + words(one.vein().word()) + ", "
                + words(one.level().word()) + ": "
                + knowledge.technique(one.technique()).says();
        List<String> went = new ArrayList<>();
        went.add("Relaxed wall " + number(one.relaxedWallMm()) + ", relaxed lumen " + number(one.relaxedLumenMm())
                + ", gap to the nerve " + number(one.nerveGapMm()) + ".");
        went.add("Settings: " + one.settings() + ".");
        went.add("How it went: " + one.happened() + ".");
        if (!one.notCompared().isEmpty()) {
            went.add("Not compared, for it is not known of both: " + String.join(", ", one.notCompared()) + ".");
        }
        went.add("Kept as " + one.pastCase() + ", segment " + one.ref() + ".");
        return new Past(title, one.invented(), alike(one), went, why(one.why()));
    }

    private static String alike(SimilarAdvice.Nearest one) {
        return one.similarity().isEmpty()
                ? ""
                : percent(one.similarity().getAsDouble()) + " alike over "
                        + percent(one.knownShare().orElse(0)) + " of what is compared";
    }

    private static List<List<String>> why(List<SimilarAdvice.Why> why) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("What is compared", "Here", "There", "Alike", "Weight"));
        why.forEach(one -> rows.add(List.of(
                one.attribute(), one.here(), one.there(), percent(one.alike()), SettingWords.plain(one.weight()))));
        return rows;
    }

    private static String words(String word) {
        return word.replace('-', ' ');
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    private static String number(OptionalDouble mm) {
        return mm.isPresent() ? SettingWords.plain(mm.getAsDouble()) + " mm" : "not recorded";
    }
}
