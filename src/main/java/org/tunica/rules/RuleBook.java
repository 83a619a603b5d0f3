package org.tunica.rules;

import java.util.BitSet;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.tunica.casefile.Faults;
import org.tunica.casefile.Nearest;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.GlossaryField;
import org.tunica.knowledge.Knowledge;

/** The rules of a release, checked whole and ready to judge. Immutable and safe for several threads. */
public final class RuleBook {
    /** How far from a limit, as a share of it, a number is still close. */
    private static final String NEAR_SHARE = "near.share";

    private final List<Rule> rules;

    /** Those that are asked before the ranking. */
    private final List<Rule> ranking;

    /** In the order of the glossary. */
    private final List<Function<Considered, Answer>> fields;

    /** Places of the fields that are numbers. */
    private final int[] numbers;

    /** Places of the fields that a technique or its numbers answer. */
    private final int[] ofOption;

    private final Map<String, Function<Segment, Answer>> segmentFields;
    private final Map<GlossaryField, Function<RankingFacts, Answer>> rankingFields;

    /** Runs the rules before the ranking. */
    private final DroolsEngine engine;

    /** The same without the engine. */
    private final OnePass onePass;

    /** Runs the rules after it; apart, so that nothing they say can reach a ranking. */
    private final DroolsEngine afterRanking;

    private final NearMisses nearMisses;
    private final NumberBands bands;

    private RuleBook(
            Knowledge knowledge,
            List<Rule> rules,
            List<Function<Considered, Answer>> fields,
            Map<String, Function<Segment, Answer>> segmentFields) {
        this.rules = List.copyOf(rules);
        this.fields = List.copyOf(fields);
        this.numbers = knowledge.glossary().fields().values().stream()
                .filter(field -> field.kind() == GlossaryField.Kind.NUMBER)
                .mapToInt(GlossaryField::place)
                .toArray();
        this.ofOption = knowledge.glossary().fields().values().stream()
                .filter(field -> FactFields.ofOption(field.id()))
                .mapToInt(GlossaryField::place)
                .toArray();
        this.segmentFields = segmentFields;
        this.rankingFields = new LinkedHashMap<>();
        new RankingFields()
                .table()
                .answers()
                .forEach((id, answer) ->
                        rankingFields.put(knowledge.glossary().fields().get(id), answer));
        this.ranking = rules.stream().filter(rule -> !rule.afterRanking()).toList();
        this.engine = new DroolsEngine(ranking);
        this.onePass = new OnePass(ranking);
        this.afterRanking =
                new DroolsEngine(rules.stream().filter(Rule::afterRanking).toList());
        this.bands = new NumberBands(ranking);
        this.nearMisses = new NearMisses(ranking, engine, knowledge.value(NEAR_SHARE));
    }

    /**
     * Parses and checks the rules of a bundle.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault, file, line and closest form
     */
    public static RuleBook of(Bundle bundle, Knowledge knowledge) {
        Faults faults = new Faults();
        AnswerTable<Segment> ofSegment = new SegmentFields(knowledge).table();
        AnswerTable<Considered> table = new FactFields(knowledge, ofSegment).table();
        glossaryFits(knowledge, table.kinds(), faults);
        List<Rule> rules = new RuleParser(knowledge, faults).parse(bundle.under("rules/", ".rule"));
        new RuleChecks(bundle, knowledge, faults).check(rules);
        new EvidenceChecks(knowledge, rules, faults).check();
        if (rules.isEmpty()) {
            faults.add("rules", "there is no rule");
        }
        faults.throwIfAny("rules");
        List<Function<Considered, Answer>> inOrder = knowledge.glossary().fields().keySet().stream()
                .map(table.answers()::get)
                .toList();
        RuleBook book = new RuleBook(knowledge, rules, inOrder, ofSegment.answers());
        book.runOnce();
        return book;
    }

    /** An option of which nothing is known goes through every rule: what cannot run ends the loading, not a case. */
    private void runOnce() {
        List<OptionFacts> nothing = List.of(OptionFacts.ofNothing(fields.size()));
        judge(nothing);
        signs(nothing);
    }

    /** Every form of a conclusion, with a place-holder where an id goes, in alphabetical order. */
    public static List<String> conclusionForms(Knowledge knowledge) {
        return new Conclusions(knowledge, new Sentences(knowledge)).forms();
    }

    /** The rules in order of file and line. */
    public List<Rule> rules() {
        return rules;
    }

    /** Ids of every limit that some rule names, and of what near misses go by, in alphabetical order. */
    public Set<String> limitsUsed() {
        Set<String> used = new TreeSet<>(Set.of(NEAR_SHARE));
        rules.forEach(rule -> used.addAll(rule.limitIds()));
        return used;
    }

    /** What the fields say about an option, and what was recorded of the other segments of its leg. */
    public OptionFacts facts(Considered option) {
        Answer[] answers = fields.stream().map(field -> field.apply(option)).toArray(Answer[]::new);
        List<OtherSegment> elsewhere = option.limb().segments().stream()
                .filter(segment -> !segment.ref().equals(option.segment().ref()))
                .map(segment -> new OtherSegment(segment, segmentFields))
                .toList();
        return new OptionFacts(option.key(), answers, elsewhere);
    }

    /**
     * What the fields say about every option of one segment; what does not depend on the technique is asked once.
     *
     * @param options of one segment
     */
    public List<OptionFacts> facts(List<Considered> options) {
        return new SegmentFacts(fields, ofOption, segmentFields).of(options);
    }

    /** What the fields say about an option that differs from one before in its numbers alone; the rest is taken over. */
    public OptionFacts facts(Considered option, OptionFacts before) {
        return before.with(numbers, place -> fields.get(place).apply(option));
    }

    /** What the fields say about an option, and what became of the ranking of its segment. */
    public OptionFacts facts(Considered option, RankingFacts ranked) {
        OptionFacts facts = facts(option);
        for (Map.Entry<GlossaryField, Function<RankingFacts, Answer>> field : rankingFields.entrySet()) {
            facts = facts.with(field.getKey(), field.getValue().apply(ranked));
        }
        return facts;
    }

    /**
     * The verdicts of the rules before the ranking over some options, in a total order that does not depend on the order of rules or
     * options.
     *
     * @throws IllegalStateException when the bound on firings is reached, which is an error and never a result
     */
    public List<Verdict> judge(Collection<OptionFacts> options) {
        return engine.judge(options);
    }

    /**
     * What {@link #judge} finds, in one pass without the engine: for a replay of very many cases, never for an advice.
     */
    public List<Verdict> judgeInOnePass(Collection<OptionFacts> options) {
        return onePass.judge(options);
    }

    /**
     * The same for one option, or nothing where an exclusion, a need to measure or a missing device keeps it out of the
     * ranking, be it in doubt: no later stage changes that.
     */
    public Optional<List<Verdict>> judgeUnlessBarred(OptionFacts option) {
        return onePass.judgeUnlessBarred(option);
    }

    /**
     * The verdicts of the rules after the ranking. They ask about the segment and its ranking, so any one option of a
     * segment stands for it.
     *
     * @param options with the ranking among their facts
     */
    public List<Verdict> signs(Collection<OptionFacts> options) {
        return afterRanking.judge(options);
    }

    /**
     * Where the numbers of an option lie among the limits of the rules. Two states of an option that differ in numbers
     * alone, with equal bands, get the same verdicts.
     */
    public BitSet bands(OptionFacts option) {
        return bands.of(option);
    }

    /**
     * Answers that stand for all a field can have: a number in every band between the limits of the rules, every word, yes
     * and no, nothing or one word of a set.
     */
    public List<Answer> possibleAnswers(GlossaryField field) {
        return PossibleAnswers.of(field, bands.limits(field));
    }

    /**
     * The rules that would turn had one number of an option been a little different; see {@link NearMiss}.
     *
     * @param verdicts what {@link #judge} said of these options
     */
    public List<NearMiss> nearMisses(Collection<OptionFacts> options, List<Verdict> verdicts) {
        return nearMisses.of(options, verdicts);
    }

    /**
     * Every rule before the ranking tried on one option, condition by condition, in the order of the files.
     *
     * @param verdicts what {@link #judge} said of this option
     */
    public List<Tried> tried(OptionFacts option, List<Verdict> verdicts) {
        return new Trial(option, verdicts).of(ranking);
    }

    /** A field the program answers in another kind would leave every condition on it without an answer for ever. */
    private static void glossaryFits(Knowledge knowledge, Map<String, GlossaryField.Kind> answered, Faults faults) {
        Map<String, GlossaryField> named = knowledge.glossary().fields();
        named.forEach((id, field) -> {
            String place = "knowledge/glossary.yaml: fields." + id;
            GlossaryField.Kind kind = answered.get(id);
            if (kind == null) {
                faults.add(place, "the program cannot answer this field" + Nearest.hint(id, answered.keySet()));
            } else if (kind != field.kind()) {
                faults.add(
                        place + ".kind",
                        "must be " + kind.word() + ", is " + field.kind().word());
            }
        });
        answered.keySet().stream()
                .filter(id -> !named.containsKey(id))
                .forEach(id -> faults.add("knowledge/glossary.yaml: fields." + id, "is missing"));
    }
}
