package org.tunica.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;
import org.tunica.plan.NearMissAdvice;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.OptionStanding;
import org.tunica.plan.SegmentAdvice;

/** A segment and its options in words. */
public final class SegmentWords {
    /** More techniques than this are counted, not named. */
    private static final int FEW = 3;

    private SegmentWords() {}

    /** The segment by name, its side in full and in capitals. */
    public static String title(SegmentAdvice segment) {
        return title(segment.ref(), segment.side(), segment.vein(), segment.level());
    }

    /** The same of a segment wherever it comes from. */
    public static String title(String ref, Limb.Side side, Segment.Vein vein, Segment.Level level) {
        return ref + ": " + side.word().toUpperCase(Locale.ROOT) + " leg, "
                + vein.word().replace('-', ' ') + ", "
                + level.word().replace('-', ' ');
    }

    /** The numbers computed for it; what is not known says so. */
    public static String numbers(SegmentAdvice.DerivedAdvice derived) {
        List<String> parts = new ArrayList<>();
        parts.add("lumen relaxed " + known(derived.relaxedLumenMm(), " mm")
                + (derived.standingEstimated() ? " (standing, estimated from lying)" : ""));
        parts.add("wall relaxed " + known(derived.relaxedWallMm(), " mm"));
        parts.add("wall pressed shut " + known(derived.collapsedWallMm(), " mm"));
        parts.add("lumen volume " + known(derived.lumenVolumeMl(), " mL"));
        parts.add("bloodless with tumescence and head-down: "
                + derived.bloodless().map(yes -> yes ? "yes" : "no").orElse("not known"));
        return "Computed: " + String.join("; ", parts) + ".";
    }

    private static String known(OptionalDouble value, String unit) {
        return value.isPresent() ? SettingWords.plain(value.getAsDouble()) + unit : "not known";
    }

    /** What little difference would make a technique stand otherwise. */
    public static String nearMiss(NearMissAdvice miss, Knowledge knowledge) {
        List<String> names = miss.techniques().stream()
                .map(id -> knowledge.technique(id).says())
                .toList();
        String who = names.size() <= FEW ? String.join(", ", names) : names.size() + " techniques";
        return "were " + miss.wouldNeed() + ": " + who + " would stand as " + spoken(miss.to()) + " instead of "
                + spoken(miss.from()) + " (" + miss.rule() + ")";
    }

    private static String spoken(OptionStanding standing) {
        return standing.word().replace('-', ' ');
    }

    /** The line with an asterisk behind the rule it names, when that rule is unverified. */
    public static String why(OptionAdvice option) {
        return Stream.of(option.reasons(), option.cautions(), option.needs())
                .flatMap(List::stream)
                .filter(reason -> option.why().contains("(" + reason.rule() + ")"))
                .findFirst()
                .map(reason -> option.why().replace(reason.rule(), reason.rule() + ReasonWords.mark(reason)))
                .orElse(option.why());
    }

    /** What stands above the options that are not ranked. */
    public static String heading(OptionStanding standing) {
        return switch (standing) {
            case MEASURE_FIRST -> "Measure first, then ask again:";
            case NOT_IN_ROOM -> "Not in the room:";
            case EXCLUDED -> "Excluded:";
            case PREFERRED, SUITABLE, CAREFUL -> throw new IllegalArgumentException("ranked: " + standing);
        };
    }
}
