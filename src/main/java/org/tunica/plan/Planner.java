package org.tunica.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Technique;
import org.tunica.physics.Derived;
import org.tunica.physics.DerivedSoFar;
import org.tunica.physics.Physics;
import org.tunica.physics.SegmentNumbers;
import org.tunica.rules.Considered;
import org.tunica.rules.NearMiss;
import org.tunica.rules.OptionFacts;
import org.tunica.rules.OptionKey;
import org.tunica.rules.RuleBook;
import org.tunica.rules.Verdict;

/** From a case to its advice: derived numbers, verdicts, standings, ranking. */
public final class Planner {
    private final Knowledge knowledge;
    private final Physics physics;
    private final RuleBook rules;
    private final OptionWriter writer;
    private final Scoring scoring;
    private final TieKeys ties;

    /** A planner over the knowledge, models and rules of one release. */
    public Planner(Knowledge knowledge, Physics physics, RuleBook rules) {
        this.knowledge = knowledge;
        this.physics = physics;
        this.rules = rules;
        this.writer = new OptionWriter(knowledge);
        this.scoring = new Scoring(knowledge);
        this.ties = new TieKeys(knowledge);
    }

    /** The advice for every segment of the case, in the order of the case. */
    public Advice advise(CaseFile caseFile, Advice.Release release) {
        List<SegmentAdvice> segments = new ArrayList<>();
        for (Limb limb : caseFile.limbs()) {
            for (Segment segment : limb.segments()) {
                segments.add(advise(caseFile, limb, segment));
            }
        }
        return advice(caseFile, release, segments);
    }

    private static Advice advice(CaseFile caseFile, Advice.Release release, List<SegmentAdvice> segments) {
        return new Advice(Advice.FORMAT, caseFile.caseRef(), release, Physics.SEED, Advice.CAUTION, segments);
    }

    /** As much of the same advice as can be told without running the heat model. */
    public AdviceSoFar adviseSoFar(CaseFile caseFile, Advice.Release release) {
        List<SegmentAdvice> segments = new ArrayList<>();
        List<AdviceSoFar.Awaited> awaited = new ArrayList<>();
        for (Limb limb : caseFile.limbs()) {
            for (Segment segment : limb.segments()) {
                DerivedSoFar soFar = physics.deriveSoFar(caseFile, segment);
                SegmentAdvice judged = advise(caseFile, limb, segment, soFar.derived());
                segments.add(AdviceSoFar.certain(judged, soFar.awaited()));
                awaited.addAll(AdviceSoFar.awaited(judged, soFar.awaited()));
            }
        }
        return new AdviceSoFar(advice(caseFile, release, segments), awaited);
    }

    /**
     * Why a technique stands as it does for a segment.
     *
     * @throws IllegalArgumentException when the case has no such segment, or there is no such technique
     */
    public Explanation explain(CaseFile caseFile, Advice.Release release, OptionKey key) {
        Technique technique = knowledge.technique(key.techniqueId());
        for (Limb limb : caseFile.limbs()) {
            for (Segment segment : limb.segments()) {
                if (segment.ref().equals(key.segmentRef())) {
                    Derived derived = physics.derive(caseFile, segment);
                    return explain(release, new Considered(caseFile, limb, segment, technique, derived));
                }
            }
        }
        throw new IllegalArgumentException("no segment " + key.segmentRef());
    }

    private Explanation explain(Advice.Release release, Considered option) {
        SegmentAdvice advice = advise(option.caseFile(), option.limb(), option.segment());
        OptionFacts facts = rules.facts(option);
        List<Verdict> verdicts = rules.judge(List.of(facts));
        List<NearMiss> misses = rules.nearMisses(List.of(facts), verdicts).stream()
                .sorted(Comparator.comparingDouble(NearMiss::share)
                        .thenComparing(miss -> miss.rule().id())
                        .thenComparing(NearMiss::turnsAt))
                .toList();
        return new Explanation(
                release,
                advice,
                advice.options().stream()
                        .filter(written ->
                                written.technique().equals(option.technique().id()))
                        .findFirst()
                        .orElseThrow(),
                rules.tried(facts, verdicts),
                misses);
    }

    /** Every technique for a segment, to judge it as it is or as it might be; in the order of their ids. */
    public List<Considered> considered(CaseFile caseFile, Limb limb, Segment segment, Derived derived) {
        return knowledge.techniques().values().stream()
                .map(technique -> new Considered(caseFile, limb, segment, technique, derived))
                .toList();
    }

    /** How each of these options would stand, and with how many points; no words, for many trials in a row. */
    public List<Rated> rate(List<Considered> options) {
        return rate(options, options.stream().map(rules::facts).toList());
    }

    /** The same with facts that need not be those of the case. */
    public List<Rated> rate(List<Considered> options, List<OptionFacts> facts) {
        return judged(options, rules.judge(facts)).values().stream()
                .map(this::rated)
                .toList();
    }

    /**
     * How the options of a segment stand and which leads, without the words: what the advice comes to that says them.
     *
     * @param options every technique for one segment
     * @param verdicts on these options
     */
    public SegmentJudgement judgement(List<Considered> options, List<Verdict> verdicts) {
        List<OptionJudgement> judgements = new ArrayList<>();
        List<Rated> rated = new ArrayList<>();
        judged(options, verdicts).values().forEach(option -> {
            judgements.add(judgement(option));
            rated.add(rated(option));
        });
        return new SegmentJudgement(options.get(0).segment().ref(), Rated.first(rated), judgements);
    }

    /** The same of one option, whatever the others. */
    public OptionJudgement judgement(Considered option, List<Verdict> verdicts) {
        return judgement(new Judged(option, verdicts));
    }

    private OptionJudgement judgement(Judged option) {
        return new OptionJudgement(
                option.option().technique().id(), option.standing(), writer.settings(option), option.voices());
    }

    /** How one option stands, and with how many points, by its verdicts. */
    public Rated rate(Considered option, List<Verdict> verdicts) {
        return rated(new Judged(option, verdicts));
    }

    /** The same standing and points with what settles ties read anew, for an option whose numbers have moved. */
    public Rated settled(Rated rated, Considered option) {
        return rated.with(ties.of(option));
    }

    private Rated rated(Judged judged) {
        return new Rated(
                judged.option().technique().id(),
                judged.standing(),
                scoring.points(judged),
                ties.of(judged.option()),
                Needed.nouns(judged.needs()));
    }

    private SegmentAdvice advise(CaseFile caseFile, Limb limb, Segment segment) {
        return advise(caseFile, limb, segment, physics.derive(caseFile, segment));
    }

    private SegmentAdvice advise(CaseFile caseFile, Limb limb, Segment segment, Derived derived) {
        List<Considered> options = considered(caseFile, limb, segment, derived);
        List<OptionFacts> facts = options.stream().map(rules::facts).toList();
        List<Verdict> verdicts = rules.judge(facts);
        Map<OptionKey, Judged> judged = judged(options, verdicts);
        List<OptionAdvice> written = judged.values().stream().map(writer::write).toList();
        Map<String, TieKey> keys = options.stream()
                .collect(Collectors.toMap(option -> option.technique().id(), ties::of));
        return new SegmentAdvice(
                segment.ref(),
                limb.side(),
                segment.vein(),
                segment.level(),
                derived(derived),
                Ranking.rank(written, keys),
                NearMissWriter.write(rules.nearMisses(facts, verdicts), judged),
                RankingFirmness.notComputed(knowledge.quantity(RankingFirmness.LIMIT)),
                Optional.empty(),
                List.of(),
                Optional.empty());
    }

    private static Map<OptionKey, Judged> judged(List<Considered> options, List<Verdict> verdicts) {
        Map<OptionKey, List<Verdict>> byOption = verdicts.stream().collect(Collectors.groupingBy(Verdict::option));
        Map<OptionKey, Judged> judged = new LinkedHashMap<>();
        options.forEach(option ->
                judged.put(option.key(), new Judged(option, byOption.getOrDefault(option.key(), List.of()))));
        return judged;
    }

    private SegmentAdvice.DerivedAdvice derived(Derived derived) {
        SegmentNumbers numbers = derived.segment();
        return new SegmentAdvice.DerivedAdvice(
                Rounded.of(numbers.relaxedLumenMm()),
                numbers.standingEstimated(),
                Rounded.of(numbers.relaxedWallMm()),
                Rounded.of(numbers.collapsedWallMm()),
                Rounded.of(numbers.lumenVolumeMl()),
                Rounded.of(numbers.wallVolumeMl()),
                bloodlessWithTumescence(derived));
    }

    private Optional<Boolean> bloodlessWithTumescence(Derived derived) {
        return knowledge.techniques().values().stream()
                .filter(technique -> technique.family() == Family.HEAT)
                .findFirst()
                .flatMap(technique -> derived.options().get(technique.id()).bloodless());
    }
}
