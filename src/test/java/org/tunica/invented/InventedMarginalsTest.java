package org.tunica.invented;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.tunica.Tunica;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Distribution;
import org.tunica.pastcases.PastCase;

/** The parts of 20,000 made-up cases are spread as the distributions named say. */
class InventedMarginalsTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final int CASES = 20_000;
    private static final List<PastCase> ALL = new ArrayList<>();
    private static final List<Segment> FIRST = new ArrayList<>();
    private static final List<Segment> SEGMENTS = new ArrayList<>();

    @BeforeAll
    static void draw() {
        TUNICA.pastCases().inventedLibrary(424_242).cases(CASES).forEach(one -> {
            ALL.add(one);
            one.caseFile().limbs().forEach(limb -> {
                FIRST.add(limb.segments().get(0));
                SEGMENTS.addAll(limb.segments());
            });
        });
    }

    @Test
    void words_byWeight() {
        follow("invented.site", ALL, one -> one.site().substring("site-".length()));
        follow("invented.year", ALL, one -> Integer.toString(one.year().orElseThrow()));
        follow("invented.class", limbs(), limb -> limb.ceapClass().orElseThrow().word());
        follow(
                "invented.deep-veins",
                limbs(),
                limb -> limb.deepVeins().orElseThrow().word());
        follow(
                "invented.segments",
                limbs(),
                limb -> Integer.toString(limb.segments().size()));
        follow("invented.vein.first", FIRST, segment -> segment.vein().word());
        follow(
                "invented.thrombus",
                SEGMENTS,
                segment -> segment.thrombus().orElseThrow().word());
        followRecorded(
                "invented.sex", ALL, one -> one.caseFile().patient().sex().map(Enum::name));
        followRecorded(
                "invented.anticoagulation",
                ALL,
                one -> one.caseFile().patient().anticoagulation().map(Enum::name));
    }

    @Test
    void levelAndCourse_byVein() {
        for (Segment.Vein vein : Segment.Vein.values()) {
            List<Segment> of =
                    SEGMENTS.stream().filter(segment -> segment.vein() == vein).toList();
            follow(
                    "invented.level." + vein.word(),
                    of,
                    segment -> segment.level().word());
            follow(
                    "invented.course." + vein.word(),
                    of,
                    segment -> segment.course().orElseThrow().word());
        }
    }

    /** Conditions and allergies steer the way chosen, not who was drawn; only who could not be treated at all is missing. */
    @Test
    void conditions_eachByItsShare() {
        Distribution conditions = TUNICA.knowledge().invented("invented.conditions");
        conditions.numbers().forEach((condition, share) -> {
            double seen = share(
                    ALL,
                    one -> one.caseFile().patient().conditions().orElseThrow().contains(condition));
            assertEquals(share, seen, 4 * Math.sqrt(share / CASES), condition);
        });
    }

    /** Age and weight show as bands; the share up to the end of each band is that of the curve. */
    @Test
    void age_followsItsCurve() {
        Distribution age = TUNICA.knowledge().invented("invented.age");
        List<PastCase> known =
                ALL.stream().filter(one -> one.ageBandYears().isPresent()).toList();
        for (int years : new int[] {30, 40, 50, 60, 70, 80, 90}) {
            double seen =
                    share(known, one -> one.ageBandYears().orElseThrow().to().orElse(999) < years);
            assertEquals(cut(age).applyAsDouble(years), seen, 0.012, "under " + years);
        }
    }

    @Test
    void length_followsItsCurve() {
        for (Segment.Vein vein :
                List.of(Segment.Vein.TRIBUTARY, Segment.Vein.SMALL_SAPHENOUS, Segment.Vein.PERFORATOR)) {
            kolmogorov(
                    "invented.length." + vein.word(),
                    SEGMENTS.stream()
                            .filter(segment -> segment.vein() == vein)
                            .mapToDouble(segment -> segment.lengthCm().orElseThrow())
                            .toArray(),
                    vein == Segment.Vein.PERFORATOR ? 0.1 : 1);
        }
    }

    /** Of one way alone, for which the curve is cut; here foam in tributaries, which no choice of a way has sorted by width. */
    @Test
    void lumen_followsItsCurve() {
        Distribution lumen = TUNICA.knowledge().invented("invented.lumen.tributary");
        Distribution family = TUNICA.knowledge().invented("invented.lumen.by-family");
        Map<String, Double> numbers = new TreeMap<>(lumen.numbers());
        numbers.put("median", lumen.number("median") * family.number("foam"));
        double[] seen = ALL.stream()
                .flatMap(one -> one.delivered().stream()
                        .flatMap(session -> session.segments().stream())
                        .filter(given -> given.technique().orElseThrow().startsWith("foam"))
                        .flatMap(given -> one.caseFile().limbs().stream()
                                .flatMap(limb -> limb.segments().stream())
                                .filter(segment -> segment.ref().equals(given.ref()))))
                .filter(segment -> segment.vein() == Segment.Vein.TRIBUTARY
                        && !segment.measured().inSpasm().orElseThrow())
                .mapToDouble(segment -> segment.lumenDiameterMm().orElseThrow())
                .toArray();
        kolmogorov(
                new Distribution(lumen.id(), lumen.says(), lumen.shape(), lumen.unit(), numbers, lumen.provenance()),
                seen,
                0.1);
    }

    @Test
    void reflux_followsItsCurve() {
        kolmogorov(
                "invented.reflux",
                SEGMENTS.stream()
                        .filter(segment -> segment.refluxSeconds().isPresent())
                        .mapToDouble(segment -> segment.refluxSeconds().orElseThrow())
                        .toArray(),
                0.1);
    }

    /** S-0088 found 6.4 mm (SD 2.0) in refluxing great saphenous veins, S-0080 5.6 mm (SD 2) at mid-thigh. */
    @Test
    void greatSaphenousVein_isAsWideAsPublished() {
        double[] mm = SEGMENTS.stream()
                .filter(segment -> segment.vein() == Segment.Vein.GREAT_SAPHENOUS
                        && !segment.measured().inSpasm().orElseThrow())
                .mapToDouble(segment -> segment.lumenDiameterMm().orElseThrow())
                .toArray();
        double mean = Arrays.stream(mm).average().orElseThrow();
        double sd = Math.sqrt(Arrays.stream(mm)
                .map(one -> (one - mean) * (one - mean))
                .average()
                .orElseThrow());
        assertTrue(mean > 5.6 && mean < 6.6, "mean " + mean);
        assertEquals(2.0, sd, 0.4);
    }

    private static void kolmogorov(String id, double[] seen, double step) {
        kolmogorov(TUNICA.knowledge().invented(id), seen, step);
    }

    /** The largest distance of the two shares, with values rounded to a step: 1.95 / sqrt(n) is passed once in 1,000 times. */
    private static void kolmogorov(Distribution distribution, double[] seen, double step) {
        DoubleUnaryOperator expected = cut(distribution);
        Arrays.sort(seen);
        double distance = 0;
        for (int i = 0; i < seen.length; i++) {
            if (i + 1 == seen.length || seen[i + 1] > seen[i] + step / 2) {
                double up = Math.min(distribution.number("high"), seen[i] + step / 2);
                distance = Math.max(distance, Math.abs(expected.applyAsDouble(up) - (i + 1.0) / seen.length));
            }
        }
        double most = 1.95 / Math.sqrt(seen.length);
        assertTrue(distance < most, distribution.id() + ": " + distance + " of " + most + ", n " + seen.length);
    }

    /** The share up to a value, from the textbook formula of the logistic curve (scale = sd sqrt(3) / pi). */
    private static DoubleUnaryOperator cut(Distribution distribution) {
        boolean log = distribution.shape() == Distribution.Shape.LOG_LOGISTIC;
        double middle = log ? Math.log(distribution.number("median")) : distribution.number("mean");
        double scale = distribution.number(log ? "spread" : "sd") * Math.sqrt(3) / Math.PI;
        DoubleUnaryOperator whole =
                value -> 0.5 + 0.5 * Math.tanh(((log ? Math.log(value) : value) - middle) / (2 * scale));
        double low = whole.applyAsDouble(distribution.number("low"));
        double high = whole.applyAsDouble(distribution.number("high"));
        return value -> (whole.applyAsDouble(value) - low) / (high - low);
    }

    private static List<Limb> limbs() {
        return ALL.stream().flatMap(one -> one.caseFile().limbs().stream()).toList();
    }

    private static <T> void followRecorded(String id, List<T> all, Function<T, Optional<String>> word) {
        List<String> known =
                all.stream().flatMap(one -> word.apply(one).stream()).toList();
        follow(id, known, one -> one.toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** Each share within four standard errors, and half a per cent for those whom nothing could treat. */
    private static <T> void follow(String id, List<T> all, Function<T, String> word) {
        Map<String, Double> weights = TUNICA.knowledge().invented(id).numbers();
        double sum = weights.values().stream().mapToDouble(weight -> weight).sum();
        weights.forEach((one, weight) -> {
            double share = weight / sum;
            double seen = share(all, drawn -> word.apply(drawn).equals(one));
            assertEquals(share, seen, 0.005 + 4 * Math.sqrt(share * (1 - share) / all.size()), id + " " + one);
        });
    }

    private static <T> double share(List<T> all, Predicate<T> holds) {
        return (double) all.stream().filter(holds).count() / all.size();
    }
}
