package org.tunica.fhir;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.plan.Advice;
import org.tunica.plan.AdviceSoFar;
import org.tunica.plan.FirmnessAdvice;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.OptionStanding;
import org.tunica.plan.Reason;
import org.tunica.plan.SegmentAdvice;

/** What a card says: one short line, and the reasons beneath it in Markdown. */
final class CardText {
    /** A summary must be shorter than 140 characters. */
    private static final int LONGEST_SUMMARY = 139;

    private static final String STILL_COMPUTING = "settings are still being computed; ask again or open the page";
    private static final int MOST_OPTIONS = 5;
    private static final int MOST_NOTES = 5;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("dd-MMM-uuuu", Locale.ENGLISH);

    private final Tunica tunica;
    private final Translated read;
    private final List<String> troubles;
    private final AdviceSoFar soFar;
    private final Advice advice;

    CardText(Tunica tunica, Translated read, List<String> troubles, AdviceSoFar soFar) {
        this.tunica = tunica;
        this.read = read;
        this.troubles = troubles;
        this.soFar = soFar;
        this.advice = soFar.advice();
    }

    /** A line cut at a word where it would be too long. */
    static String short139(String line) {
        if (line.length() <= LONGEST_SUMMARY) {
            return line;
        }
        int space = line.lastIndexOf(' ', LONGEST_SUMMARY - 3);
        return line.substring(0, space > 0 ? space : LONGEST_SUMMARY - 3) + "...";
    }

    String overviewSummary() {
        long ranked = advice.segments().stream()
                .filter(segment -> !Proposal.ranked(segment).isEmpty())
                .count();
        long waiting = advice.segments().stream()
                .filter(segment ->
                        !Missing.of(segment, tunica.knowledge().glossary()).isEmpty())
                .count();
        long computing = advice.segments().stream().filter(this::isAwaited).count();
        int all = advice.segments().size();
        return all + (all == 1 ? " leg vein segment" : " leg vein segments") + " on record: techniques ranked for "
                + ranked + (waiting == 0 ? "" : ", something to measure for " + waiting)
                + (computing == 0 ? "" : ", settings still being computed for " + computing);
    }

    private boolean isAwaited(SegmentAdvice segment) {
        return !soFar.awaited(segment.ref()).isEmpty();
    }

    /** The technique of a segment if how it stands is not computed yet. */
    Optional<AdviceSoFar.Awaited> awaited(SegmentAdvice segment, String technique) {
        return soFar.awaited(segment.ref()).stream()
                .filter(one -> one.technique().equals(technique))
                .findFirst();
    }

    String awaitedSummary(SegmentAdvice segment, String technique) {
        return what(segment, awaited(segment, technique).orElseThrow().says()) + STILL_COMPUTING;
    }

    private static String what(SegmentAdvice segment, String technique) {
        return segment.side().word().toUpperCase(Locale.ROOT) + " " + segment.ref() + ", " + technique + ": ";
    }

    String summary(SegmentAdvice segment, OptionAdvice option) {
        String what = what(segment, option.says());
        return switch (option.standing()) {
            case PREFERRED, SUITABLE, CAREFUL ->
                what + option.standing().word() + ", "
                        + (isAwaited(segment)
                                ? "its place is still being computed"
                                : "place " + option.rank().orElseThrow() + " of "
                                        + Proposal.ranked(segment).size());
            case MEASURE_FIRST -> what + "measure first; " + option.why();
            case NOT_IN_ROOM -> what + "not in the room";
            case EXCLUDED -> what + "excluded, " + option.why();
        };
    }

    String summary(SegmentAdvice segment) {
        List<OptionAdvice> ranked = Proposal.ranked(segment);
        if (isAwaited(segment)) {
            return Words.of(segment) + ": " + STILL_COMPUTING;
        }
        return Words.of(segment) + ": "
                + (ranked.isEmpty()
                        ? "no technique can be ranked"
                        : ranked.size() + " techniques ranked, first "
                                + ranked.get(0).says());
    }

    String overview() {
        List<String> parts = new ArrayList<>();
        for (SegmentAdvice segment : advice.segments()) {
            parts.add("**" + Words.of(segment) + "**");
            parts.addAll(options(segment));
        }
        parts.addAll(data(Optional.empty()));
        return whole(parts);
    }

    String detail(SegmentAdvice segment) {
        List<String> parts = new ArrayList<>(List.of("**" + Words.of(segment) + "**"));
        parts.addAll(options(segment));
        parts.addAll(data(Optional.of(segment)));
        return whole(parts);
    }

    String detail(SegmentAdvice segment, OptionAdvice option) {
        List<String> parts = new ArrayList<>();
        parts.add("**" + Words.of(segment) + ": " + option.says() + " stands as "
                + option.standing().word() + "**");
        parts.add(option.why());
        reasons(parts, "What excludes it", option, Reason.Stands.EXCLUDES);
        reasons(parts, "What the room lacks", option, Reason.Stands.NOT_IN_ROOM);
        list(parts, "To measure or ask first", option.needs());
        list(parts, "Cautions", option.cautions());
        reasons(parts, "What speaks for it", option, Reason.Stands.FOR);
        reasons(parts, "What speaks against it", option, Reason.Stands.AGAINST);
        String setting = Words.setting(option);
        if (!setting.isEmpty()) {
            parts.add("Computed, to be held against the device's instructions: " + setting);
        }
        parts.add("Options for this segment:");
        parts.addAll(options(segment));
        parts.addAll(data(Optional.of(segment)));
        return whole(parts);
    }

    String noSegment(Orders.Order order) {
        List<String> parts = new ArrayList<>();
        parts.add("The order names "
                + (order.places().isEmpty()
                        ? "no place"
                        : String.join(", ", order.places().stream().sorted().toList()))
                + ". The scan on record holds "
                + String.join("; ", advice.segments().stream().map(Words::of).toList()) + ".");
        parts.addAll(data(Optional.empty()));
        return whole(parts);
    }

    static String faults(List<Fault> faults, int most) {
        List<String> lines = new ArrayList<>();
        faults.stream().limit(most).forEach(fault -> lines.add("- " + literally(fault.toString())));
        if (faults.size() > most) {
            lines.add("- and " + (faults.size() - most) + " more");
        }
        return "Nothing is guessed, so there is no advice. To mend in the record:\n\n" + String.join("\n", lines)
                + "\n\n" + Advice.CAUTION;
    }

    private List<String> options(SegmentAdvice segment) {
        return isAwaited(segment) ? soFar(segment) : ranked(segment);
    }

    /** What stands whatever is still computed, in no order of merit. */
    private List<String> soFar(SegmentAdvice segment) {
        List<String> lines = segment.options().stream()
                .filter(option -> option.standing() != OptionStanding.NOT_IN_ROOM)
                .map(option -> "- " + option.says() + ": " + option.standing().word() + "; " + option.why())
                .toList();
        List<String> awaited = soFar.awaited(segment.ref()).stream()
                .map(AdviceSoFar.Awaited::says)
                .toList();
        return List.of(
                lines.isEmpty() ? "Nothing is known yet." : String.join("\n", lines),
                "Still being computed: " + String.join(", ", awaited)
                        + ". How these stand is not known yet, so nothing is ranked; ask again in a few seconds or open"
                        + " the page.");
    }

    private List<String> ranked(SegmentAdvice segment) {
        List<String> parts = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        List<OptionAdvice> ranked = Proposal.ranked(segment);
        ranked.stream()
                .limit(MOST_OPTIONS)
                .forEach(option -> lines.add(option.rank().orElseThrow() + ". " + option.says() + ": "
                        + option.standing().word() + "; " + option.why()));
        if (!lines.isEmpty()) {
            parts.add(String.join("\n", lines));
        }
        Missing.of(segment, tunica.knowledge().glossary()).stream()
                .limit(MOST_NOTES)
                .forEach(missing ->
                        parts.add("Not recorded: " + missing.noun() + " (" + missing.waiting() + " waiting)"));
        parts.add(
                "How firm: " + segment.firmness().map(FirmnessAdvice::says).orElse("still being computed; ask again"));
        segment.nearMisses().stream()
                .limit(1)
                .forEach(near -> parts.add(
                        "Close to a limit: " + near.says() + " (" + near.rule() + "), turns with " + near.wouldNeed()));
        return parts;
    }

    private static void reasons(List<String> parts, String head, OptionAdvice option, Reason.Stands stands) {
        list(
                parts,
                head,
                option.reasons().stream()
                        .filter(reason -> reason.stands() == stands)
                        .toList());
    }

    private static void list(List<String> parts, String head, List<Reason> reasons) {
        if (!reasons.isEmpty()) {
            parts.add(head + ":\n"
                    + String.join(
                            "\n",
                            reasons.stream().map(one -> "- " + Words.of(one)).toList()));
        }
    }

    /** When what was recorded, and what of the record was not used. */
    private List<String> data(Optional<SegmentAdvice> segment) {
        List<String> parts = new ArrayList<>();
        Map<String, List<String>> byDay = new LinkedHashMap<>();
        read.ages().stream()
                .filter(age ->
                        segment.isPresent() && age.about().equals(segment.get().ref()))
                .forEach(age -> byDay.computeIfAbsent(day(age.when()), any -> new ArrayList<>())
                        .add(age.says()));
        byDay.forEach((day, says) -> parts.add("Recorded " + day + ": " + String.join(", ", says)));
        List<String> notes = Stream.concat(
                        troubles.stream(), read.unused().stream().map(one -> one.resource() + ": " + one.reason()))
                .toList();
        if (!notes.isEmpty()) {
            List<String> lines = new ArrayList<>();
            notes.stream().limit(MOST_NOTES).forEach(note -> lines.add("- " + literally(note)));
            if (notes.size() > MOST_NOTES) {
                lines.add("- and " + (notes.size() - MOST_NOTES) + " more");
            }
            parts.add("Not used of the record:\n" + String.join("\n", lines));
        }
        return parts;
    }

    private static String day(String when) {
        return When.of(when)
                .map(known -> known.from().equals(known.to()) ? DAY.format(known.from()) : when)
                .orElse("without a date");
    }

    private String whole(List<String> parts) {
        return String.join("\n\n", parts) + "\n\n" + Words.of(advice.release()) + ". " + advice.caution();
    }

    /** A text from outside, shown as it is: no link, no mark-up and no line of its own can come of it. */
    private static String literally(String text) {
        return "`" + text.replace('`', '\'').replaceAll("[\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}]", " ") + "`";
    }
}
