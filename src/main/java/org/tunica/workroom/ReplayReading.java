package org.tunica.workroom;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import org.tunica.casefile.UcumWords;
import org.tunica.knowledge.DemoFiles;
import org.tunica.replay.Gravity;

/**
 * A replay as people read it: a document {@code tunica-replay/1}, written by whichever program.
 *
 * @param against version and digest of the rules it was held against
 * @param draft version and digest of the rules that were tried
 * @param cases what was replayed, in words
 * @param invented whether cases of people who never were are among them
 * @param kinds how many segments show which kind of change
 * @param gravities how many segments are how grave, the worst first
 * @param causes which rules turned, the worst first
 * @param worst the gravest segments
 * @param unreadable cases the draft cannot read
 * @param notCompared what the comparison leaves out
 * @param digest which who acknowledges it names
 */
public record ReplayReading(
        String against,
        String draft,
        List<String> cases,
        boolean invented,
        long casesCount,
        long segmentsCount,
        long changedSegmentsCount,
        List<Counted> kinds,
        List<Counted> gravities,
        List<Cause> causes,
        List<Changed> worst,
        List<String> unreadable,
        List<String> notCompared,
        String digest) {
    static final int DEMO_CASES = DemoFiles.cases().size();

    /** Something in words and how many segments show it. */
    public record Counted(String says, long segmentsCount) {}

    /** A rule that turned, and what came of it at worst. */
    public record Cause(String rule, String says, String act, String worst, long segmentsCount, List<String> limits) {}

    /**
     * A segment that comes out otherwise.
     *
     * @param where case, segment, side, vein and level in words
     * @param gravity the worst of it, in words
     * @param first which technique led and which leads now; empty when that is the same
     * @param options what of each option is another
     * @param turns which rules turned
     */
    public record Changed(String where, String gravity, String first, List<String> options, List<String> turns) {}

    /** Segments that are equally grave. */
    public record Group(String gravity, List<Changed> segments) {}

    /**
     * Reads a document.
     *
     * @throws org.tunica.casefile.FaultyInput when it is none
     */
    public static ReplayReading of(String json) {
        Faults faults = new Faults();
        FieldReader reader =
                new FieldReader(JsonText.parseRecord("replay", json.getBytes(StandardCharsets.UTF_8)), "$", faults);
        FieldReader cases = part(reader, "cases");
        ReplayReading reading = new ReplayReading(
                side(part(reader, "against")),
                side(part(reader, "draft")),
                cases.texts("says"),
                cases.flag("invented").orElse(false),
                count(cases, "casesCount"),
                count(cases, "segmentsCount"),
                count(reader, "changedSegmentsCount"),
                parts(reader, "kinds").stream()
                        .map(one -> new Counted(kind(one.text("kind").orElse("")), count(one, "segmentsCount")))
                        .toList(),
                parts(reader, "gravities").stream()
                        .map(one -> new Counted(one.text("says").orElse(""), count(one, "segmentsCount")))
                        .toList(),
                parts(reader, "causes").stream().map(ReplayReading::cause).toList(),
                parts(reader, "worst").stream().map(ReplayReading::changed).toList(),
                parts(reader, "unreadable").stream()
                        .map(one -> one.text("caseRef").orElse("") + ": " + String.join("; ", one.texts("faults")))
                        .toList(),
                reader.texts("notCompared"),
                reader.text("digest").orElse(""));
        faults.throwIfAny("replay");
        return reading;
    }

    /** Whether nothing comes out otherwise. */
    public boolean same() {
        return changedSegmentsCount == 0 && unreadable.isEmpty();
    }

    /** The gravest segments, those that are equally grave together. */
    public List<Group> groups() {
        Map<String, List<Changed>> groups = new LinkedHashMap<>();
        worst.forEach(one ->
                groups.computeIfAbsent(one.gravity(), says -> new ArrayList<>()).add(one));
        return groups.entrySet().stream()
                .map(group -> new Group(group.getKey(), group.getValue()))
                .toList();
    }

    private static FieldReader part(FieldReader reader, String field) {
        return reader.object(field).orElseGet(() -> reader.emptyPart(field));
    }

    private static List<FieldReader> parts(FieldReader reader, String field) {
        return reader.objects(field).orElse(List.of());
    }

    private static long count(FieldReader reader, String field) {
        return (long) reader.number(field).orElse(0);
    }

    private static String side(FieldReader side) {
        return side.text("version").orElse("") + " (" + side.text("state").orElse("") + ", "
                + side.text("digest").orElse("") + ")";
    }

    private static String kind(String word) {
        return switch (word) {
            case "first-option" -> "another technique leads, or none does";
            case "standing" -> "an option stands otherwise";
            case "settings" -> "settings are others";
            default -> "only reasons are others";
        };
    }

    private static String gravity(String word) {
        return Arrays.stream(Gravity.values())
                .filter(one -> one.word().equals(word))
                .map(Gravity::says)
                .findFirst()
                .orElseGet(() -> spaced(word));
    }

    private static String spaced(String word) {
        return word.replace('-', ' ');
    }

    private static Cause cause(FieldReader one) {
        return new Cause(
                one.text("rule").orElse("no rule"),
                one.text("says").orElse(""),
                one.text("act").map(ReplayReading::spaced).orElse("numbers alone moved"),
                one.text("gravity").map(ReplayReading::gravity).orElse(""),
                count(one, "segmentsCount"),
                parts(one, "limits").stream().map(ReplayReading::moved).toList());
    }

    private static Changed changed(FieldReader one) {
        FieldReader change = part(one, "change");
        Optional<String> was = change.text("firstBefore");
        Optional<String> is = change.text("firstAfter");
        List<String> options = new ArrayList<>();
        parts(change, "options").forEach(option -> options.add(option(option)));
        return new Changed(
                one.text("caseRef").orElse("") + ", " + change.text("ref").orElse("") + ", "
                        + one.text("side").orElse("") + " "
                        + spaced(one.text("vein").orElse("")) + ", "
                        + spaced(one.text("level").orElse("")),
                gravity(change.text("gravity").orElse("")),
                was.equals(is) ? "" : "was " + was.orElse("none") + ", is " + is.orElse("none"),
                options,
                parts(change, "turns").stream().map(ReplayReading::turn).toList());
    }

    private static String option(FieldReader option) {
        Optional<String> was = option.text("before").map(ReplayReading::spaced);
        Optional<String> is = option.text("after").map(ReplayReading::spaced);
        String standing = was.equals(is)
                ? "stands as before, " + is.orElse("unknown")
                : "was " + was.orElse("not known") + ", is " + is.orElse("there no longer");
        String settings = parts(option, "settings").stream()
                .map(one -> one.text("setting").orElse("") + ": was "
                        + one.text("before").orElse("none") + ", is "
                        + one.text("after").orElse("none"))
                .collect(Collectors.joining("; "));
        return option.text("technique").orElse("") + ": " + standing + (settings.isEmpty() ? "" : "; " + settings);
    }

    private static String turn(FieldReader turn) {
        String limits = parts(turn, "limits").stream().map(ReplayReading::moved).collect(Collectors.joining("; "));
        return turn.text("rule").orElse("") + " " + spaced(turn.text("act").orElse("")) + " ("
                + turn.text("title").orElse("") + ") for " + String.join(", ", turn.texts("techniques"))
                + (limits.isEmpty() ? "" : "; " + limits);
    }

    private static String moved(FieldReader limit) {
        String unit = limit.text("unit").orElse("");
        return limit.text("id").orElse("") + ": was " + amount(limit.number("beforeValue"), unit) + ", is "
                + amount(limit.number("afterValue"), unit);
    }

    private static String amount(OptionalDouble value, String unit) {
        return value.isEmpty()
                ? "not there"
                : BigDecimal.valueOf(value.getAsDouble()).stripTrailingZeros().toPlainString() + UcumWords.behind(unit);
    }
}
