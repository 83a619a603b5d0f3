package org.tunica.similar;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Faults;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.SegmentAdvice;

/**
 * Finds signs of a hard case in past cases: hardly any is like this one, or those that are speak against what is ranked first.
 * They call colleagues together and change no ranking. No count of a small group is told, only the bound it passes.
 *
 * <p>Definitions of this project, each bound a number of knowledge/: two segments are alike from a likeness on
 * ({@link Similarity}); a base tells of rarity only when enough of its segments can be compared; like ones disagree when most
 * were treated by another kind of technique, or when many treated by the same kind were found open at their last scan.
 */
public final class PastSigns {
    private static final String ALIKE = "meeting.alike.min";
    private static final String BASE = "meeting.past-segments.min";
    private static final String FEW = "meeting.rare.max";
    private static final String MANY = "meeting.alike-cases.min";
    private static final String OTHERS = "meeting.other-kind.min";
    private static final String OPEN = "meeting.found-open.min";
    private static final List<String> SHARES = List.of(ALIKE, OTHERS, OPEN);
    private static final double WHOLE = 100;

    /** Ids of the numbers of knowledge/ that are read here. */
    public static final List<String> IDS = List.of(ALIKE, BASE, FEW, MANY, OTHERS, OPEN);

    private final Knowledge knowledge;
    private final CaseLibrary library;

    /** Over past cases, by the bounds of a release. */
    public PastSigns(Knowledge knowledge, CaseLibrary library) {
        this.knowledge = knowledge;
        this.library = library;
    }

    /**
     * A sign.
     *
     * @param title what it is, in a word or two
     * @param says why, in a sentence
     * @param limits the numbers it rests on
     * @param invented whether it comes from made-up cases
     */
    public record Sign(String title, String says, List<Quantity> limits, boolean invented) {
        public Sign {
            limits = List.copyOf(limits);
        }
    }

    /**
     * Makes sure that the bounds are shares and counts.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault by file and key
     */
    public static void check(Knowledge knowledge) {
        Faults faults = new Faults();
        for (String id : IDS) {
            double value = knowledge.value(id);
            boolean share = SHARES.contains(id);
            if (share ? value <= 0 || value > 1 : value < 1 || value != Math.rint(value)) {
                faults.add(
                        "knowledge/limits/meeting-past.yaml: " + id + ".value",
                        share ? "must be more than 0 and at most 1" : "must be a whole number from 1");
            }
        }
        faults.throwIfAny("knowledge");
    }

    /** The signs for one segment of a case, given how its options stand. */
    public List<Sign> of(CaseFile caseFile, SegmentAdvice advice) {
        return caseFile.limbs().stream()
                .flatMap(limb -> limb.segments().stream()
                        .filter(segment -> segment.ref().equals(advice.ref()))
                        .map(segment -> of(caseFile, limb, segment, advice)))
                .findFirst()
                .orElse(List.of());
    }

    private List<Sign> of(CaseFile caseFile, Limb limb, Segment segment, SegmentAdvice advice) {
        Found found = library.nearest(caseFile, limb, segment, SimilarFilter.ALL, looked());
        List<PastSegment> alike = found.hits().stream()
                .filter(hit -> hit.likeness().orElseThrow().similarity() >= knowledge.value(ALIKE))
                .map(Hit::past)
                .toList();
        List<Sign> signs = new ArrayList<>();
        int compared = found.considered() - found.tooLittleKnown();
        if (compared >= knowledge.value(BASE) && people(alike.stream()) <= knowledge.value(FEW)) {
            signs.add(rare());
        }
        advice.options().stream()
                .findFirst()
                .filter(option -> option.standing().ranked())
                .ifPresent(first -> {
                    others(alike, first).ifPresent(signs::add);
                    foundOpen(alike, first).ifPresent(signs::add);
                });
        return signs;
    }

    /** How many of the nearest segments are looked at: enough for each bound on a count. */
    private int looked() {
        return (int) Math.max(knowledge.value(BASE), knowledge.value(MANY));
    }

    private String nearest() {
        return "among the " + looked() + " nearest past segments, of the cases at least " + percent(ALIKE) + " alike";
    }

    private Sign rare() {
        return sign(
                "rare",
                "of the past cases that can be compared, at most " + plain(FEW) + " hold a segment at least "
                        + percent(ALIKE) + " alike",
                BASE,
                FEW,
                ALIKE);
    }

    private Optional<Sign> others(List<PastSegment> alike, OptionAdvice first) {
        long all = people(alike.stream());
        long others = people(alike.stream().filter(past -> family(past) != first.family()));
        if (all < knowledge.value(MANY) || others < knowledge.value(OTHERS) * all) {
            return Optional.empty();
        }
        return Optional.of(sign(
                "similar cases disagree with the ranking",
                nearest() + ", at least " + percent(OTHERS) + " were treated by another kind of technique than "
                        + words(first.family()) + ", which is ranked first",
                BASE,
                ALIKE,
                MANY,
                OTHERS));
    }

    private Optional<Sign> foundOpen(List<PastSegment> alike, OptionAdvice first) {
        List<PastSegment> scanned = alike.stream()
                .filter(past -> family(past) == first.family() && past.closed().isPresent())
                .toList();
        long all = people(scanned.stream());
        long open = people(scanned.stream().filter(past -> !past.closed().orElseThrow()));
        if (all < knowledge.value(MANY) || open < knowledge.value(OPEN) * all) {
            return Optional.empty();
        }
        return Optional.of(sign(
                "similar cases disagree with the ranking",
                nearest() + " and treated by " + words(first.family()) + ", which is ranked first, at least "
                        + percent(OPEN) + " were found open at their last scan",
                BASE,
                ALIKE,
                MANY,
                OPEN));
    }

    private Sign sign(String title, String says, String... ids) {
        return new Sign(title, says, Stream.of(ids).map(knowledge::quantity).toList(), library.invented());
    }

    /** A past case stands for a person; one with two such veins counts once. */
    private static long people(Stream<PastSegment> segments) {
        return segments.map(past -> past.pastCase().id()).distinct().count();
    }

    private Family family(PastSegment past) {
        return knowledge.technique(past.treated().technique()).family();
    }

    private static String words(Family family) {
        return switch (family) {
            case HEAT -> "heat";
            case FOAM -> "foam";
            case MECHANOCHEMICAL -> "mechanochemical closure";
            case ADHESIVE -> "adhesive";
            case FOCUSED_ULTRASOUND -> "focused ultrasound";
        };
    }

    private String plain(String id) {
        return String.format(Locale.ROOT, "%.0f", knowledge.value(id));
    }

    private String percent(String id) {
        return Math.round(WHOLE * knowledge.value(id)) + " %";
    }
}
