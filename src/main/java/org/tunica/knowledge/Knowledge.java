package org.tunica.knowledge;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.tunica.casefile.KnownWords;
import org.tunica.casefile.PlausibleRange;

/**
 * Everything under knowledge/, loaded once and checked whole. Immutable.
 *
 * @param sources by id
 * @param quantities limits, weights and constants by id
 * @param techniques by id, in order of id
 * @param conditions id to words
 * @param allergies id to words
 * @param measurements by JSON path without indexes
 * @param changes change records by number
 * @param evidence what became of each row of the evidence, by id
 * @param conflicts where sources disagree and what the rules make of it, by id
 * @param accepted remarks of the review of rules that may stand, by id
 * @param hazards what could go wrong, by id
 * @param principles why the segments of a session are worked on in their order, by id
 * @param afterCare what scans look for afterwards and what is done about a clot, by id
 * @param plain words and figures for patients
 * @param rates how many treated veins stayed closed, by id
 * @param codes what codes of other systems mean in words of a case
 * @param invented from what made-up past cases are drawn, by id
 * @param words what may stay of a free text in a past case
 * @param decisions what becomes of each field when the person is taken out of a case, by record and field
 * @param likeness how alike the attributes of two treated segments are, by id, in order of id
 */
public record Knowledge(
        Map<String, Source> sources,
        Map<String, Quantity> quantities,
        Map<String, Technique> techniques,
        Map<String, String> conditions,
        Map<String, String> allergies,
        Map<String, Measurement> measurements,
        Map<String, ChangeRecord> changes,
        Map<String, Evidence> evidence,
        Map<String, Conflict> conflicts,
        Map<String, AcceptedRemark> accepted,
        Map<String, Hazard> hazards,
        IntendedUse intendedUse,
        Map<String, Statement> principles,
        Map<String, Statement> afterCare,
        PlainWords plain,
        Map<String, PublishedRate> rates,
        CodeFile codes,
        Map<String, Distribution> invented,
        ClinicalWords words,
        Map<String, FieldDecision> decisions,
        Map<String, LikenessRule> likeness,
        Glossary glossary)
        implements KnownWords {

    /** How the path of a number starts that stands in a follow-up and not in a case. */
    public static final String FOLLOW_UP = "followup.";

    /** How the path of a number starts that stands in a record of a delivery and not in a case. */
    public static final String DELIVERED = "delivered.";

    /**
     * Loads and checks the knowledge of a bundle.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault by file and key
     */
    public static Knowledge of(Bundle bundle) {
        return new KnowledgeReader(bundle).read();
    }

    /**
     * A number by id.
     *
     * @throws IllegalArgumentException when there is none of that id
     */
    public Quantity quantity(String id) {
        Quantity quantity = quantities.get(id);
        if (quantity == null) {
            throw new IllegalArgumentException("no quantity " + id + " in knowledge/");
        }
        return quantity;
    }

    /** The value of {@link #quantity(String)}, in its unit. */
    public double value(String id) {
        return quantity(id).value();
    }

    /**
     * A technique by id.
     *
     * @throws IllegalArgumentException when there is none of that id
     */
    public Technique technique(String id) {
        Technique technique = techniques.get(id);
        if (technique == null) {
            throw new IllegalArgumentException("no technique " + id + " in knowledge/");
        }
        return technique;
    }

    /**
     * A sentence about the time afterwards by id.
     *
     * @throws IllegalArgumentException when there is none of that id
     */
    public Statement afterCare(String id) {
        Statement statement = afterCare.get(id);
        if (statement == null) {
            throw new IllegalArgumentException("no sentence " + id + " in knowledge/after-care.yaml");
        }
        return statement;
    }

    /**
     * From what a part of a made-up case is drawn, by id.
     *
     * @throws IllegalArgumentException when there is none of that id
     */
    public Distribution invented(String id) {
        Distribution distribution = invented.get(id);
        if (distribution == null) {
            throw new IllegalArgumentException("no distribution " + id + " in knowledge/invented.yaml");
        }
        return distribution;
    }

    /**
     * A source by id.
     *
     * @throws IllegalArgumentException when there is none of that id
     */
    public Source source(String id) {
        Source source = sources.get(id);
        if (source == null) {
            throw new IllegalArgumentException("no source " + id + " in knowledge/");
        }
        return source;
    }

    /** Ids of rules and limits that ended, with the number of the change record that ended each; none is ever used again. */
    public SortedMap<String, String> retired() {
        SortedMap<String, String> retired = new TreeMap<>();
        changes.values().forEach(change -> change.retires().forEach(id -> retired.putIfAbsent(id, change.number())));
        return retired;
    }

    @Override
    public Set<String> techniqueIds() {
        return techniques.keySet();
    }

    @Override
    public Set<String> allergyIds() {
        return allergies.keySet();
    }

    @Override
    public Set<String> conditionIds() {
        return conditions.keySet();
    }

    @Override
    public Optional<PlausibleRange> plausibleRange(String path) {
        return Optional.ofNullable(measurements.get(path)).map(Measurement::range);
    }
}
