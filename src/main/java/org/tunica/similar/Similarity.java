package org.tunica.similar;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.tunica.casefile.Faults;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.LikenessRule;

/**
 * How alike two segments are: the mean of their local similarities by weight over what is known of both (Aamodt and Plaza,
 * AI Commun 1994;7(1):39-59, for the cycle it belongs to; the mean of local similarities is common practice there).
 *
 * <pre>
 *   s(a, b) = sum of w_i s_i(a_i, b_i) / sum of w_i,   over every attribute i known of a and of b
 * </pre>
 *
 * <p>Immutable. Weights are looked at when comparing, so other weights need no other index.
 */
public final class Similarity {
    private static final double HAIR = 1e-9;

    private final Vocabulary vocabulary;
    private final Map<Field, LikenessRule> rules = new EnumMap<>(Field.class);
    private final Map<Field, LocalSimilarity> locals = new EnumMap<>(Field.class);
    private final Map<Field, Double> weights = new EnumMap<>(Field.class);
    private final double wholeWeight;
    private final double leastKnownShare;
    private final double leastAnsweredShare;

    /** Ids of the numbers of knowledge/ that are read here, beside the attributes. */
    public static final List<String> IDS = List.of("similar.known-share.min", "similar.answered-share.min");

    /** The comparison of a release. */
    public Similarity(Knowledge knowledge) {
        this(
                knowledge.likeness().values(),
                new Vocabulary(knowledge),
                knowledge.value(IDS.get(0)),
                knowledge.value(IDS.get(1)));
    }

    /**
     * Holds the attributes of a release against what the program compares.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault by file and key
     */
    public static void check(Knowledge knowledge) {
        Faults faults = new Faults();
        new SimilarityChecks(knowledge, faults).check(knowledge.likeness().values());
        for (String id : IDS) {
            if (knowledge.value(id) < 0 || knowledge.value(id) > 1) {
                faults.add("knowledge/limits/similar.yaml: " + id + ".value", "must be from 0 to 1");
            }
        }
        faults.throwIfAny("knowledge");
    }

    /** A comparison by these rules over these words; fields without a rule are not compared. */
    Similarity(
            Collection<LikenessRule> likeness,
            Vocabulary vocabulary,
            double leastKnownShare,
            double leastAnsweredShare) {
        this.vocabulary = vocabulary;
        this.leastKnownShare = leastKnownShare;
        this.leastAnsweredShare = leastAnsweredShare;
        for (LikenessRule rule : likeness) {
            Field field = Field.of(rule.field()).orElseThrow();
            rules.put(field, rule);
            locals.put(field, LocalSimilarity.of(rule.comparison(), vocabulary.of(field)));
            weights.put(field, rule.weight());
        }
        this.wholeWeight = sum(weights.values());
    }

    /** The same with other weights; a field that is not named keeps its own. */
    Similarity weighted(Map<Field, Double> others) {
        List<LikenessRule> changed = rules.entrySet().stream()
                .map(entry -> weighted(entry.getValue(), others.getOrDefault(entry.getKey(), weight(entry.getKey()))))
                .toList();
        return new Similarity(changed, vocabulary, leastKnownShare, leastAnsweredShare);
    }

    private static LikenessRule weighted(LikenessRule rule, double weight) {
        return new LikenessRule(rule.id(), rule.says(), rule.field(), weight, rule.comparison(), rule.provenance());
    }

    /** How alike two segments are, attribute by attribute. */
    public Likeness of(Profile here, Profile there) {
        ValueWords values = new ValueWords(vocabulary, rules);
        double known = knownWeight(here, there);
        List<Likeness.Contribution> contributions = new ArrayList<>();
        List<Likeness.NotCompared> not = new ArrayList<>();
        for (Map.Entry<Field, LikenessRule> entry : rules.entrySet()) {
            Field field = entry.getKey();
            String says = entry.getValue().says();
            double weight = weight(field);
            if (comparable(field, here, there)) {
                double alike = local(field).of(field, here, there);
                contributions.add(new Likeness.Contribution(
                        says, values.of(field, here), values.of(field, there), alike, weight, weight * alike / known));
            } else {
                not.add(new Likeness.NotCompared(says, weight, values.whyNot(field, here, there)));
            }
        }
        return new Likeness(score(here, there), known / wholeWeight, contributions, not);
    }

    /** How alike two segments are, in the same order of sums as everywhere. */
    double score(Profile here, Profile there) {
        double sum = 0;
        double known = 0;
        for (Field field : rules.keySet()) {
            if (comparable(field, here, there)) {
                sum += weight(field) * local(field).of(field, here, there);
                known += weight(field);
            }
        }
        return known == 0 ? 0 : sum / known;
    }

    private double knownWeight(Profile here, Profile there) {
        double known = 0;
        for (Field field : rules.keySet()) {
            known += comparable(field, here, there) ? weight(field) : 0;
        }
        return known;
    }

    /** Whether so little of what is known here is known there that it must not be told how alike they are. */
    boolean tooLittleKnown(Profile here, Profile there) {
        return knownWeight(here, there) < leastKnownWeight(here);
    }

    /**
     * The least weight of attributes known of both: a share of all weights, and a share of what the question knows, because a
     * segment whose wall nobody measured does not answer a question about a wall. A hair less, so that a sum in another order
     * does not miss it.
     */
    double leastKnownWeight(Profile question) {
        return Math.max(leastKnownShare * wholeWeight, leastAnsweredShare * knownWeight(question, question)) - HAIR;
    }

    /** Whether a field is known of both; settings of two ways have nothing in common. */
    private static boolean comparable(Field field, Profile a, Profile b) {
        return a.knows(field)
                && b.knows(field)
                && (field != Field.SETTINGS || a.at(field.column()) == b.at(field.column()));
    }

    /** The fields compared, in their order. */
    Collection<Field> fields() {
        return rules.keySet();
    }

    LocalSimilarity local(Field field) {
        return Objects.requireNonNull(locals.get(field));
    }

    double weight(Field field) {
        return weights.getOrDefault(field, 0.0);
    }

    private static double sum(Collection<Double> numbers) {
        double sum = 0;
        for (double number : numbers) {
            sum += number;
        }
        return sum;
    }
}
