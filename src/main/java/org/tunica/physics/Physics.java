package org.tunica.physics;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Technique;

/** The computed models with the constants of one release. Immutable and safe for several threads. */
public final class Physics {
    private final Knowledge knowledge;
    private final HeatPlanner heat;
    private final StrongFoam strongFoam;
    private final HeatFingerprint heatNumbers;
    private final Set<String> quantitiesUsed;

    /** The seed of every draw. */
    public static final long SEED = 1;

    /**
     * Models that take their constants from this knowledge.
     *
     * @throws org.tunica.casefile.FaultyInput with everything that a technique lacks to be computed
     */
    public Physics(Knowledge knowledge) {
        this(knowledge, new RecentHeat());
    }

    /**
     * The same with a memory of heat settings that may outlast it.
     *
     * @param memory of these constants, see {@link #heatDigest()}
     * @throws org.tunica.casefile.FaultyInput with everything that a technique lacks to be computed
     */
    public Physics(Knowledge knowledge, HeatMemory memory) {
        this.knowledge = knowledge;
        Set<String> ofHeat = new TreeSet<>();
        this.heat = new HeatPlanner(
                knowledge,
                id -> {
                    ofHeat.add(id);
                    return knowledge.value(id);
                },
                memory);
        this.heatNumbers = new HeatFingerprint(knowledge, ofHeat);
        Set<String> used = new TreeSet<>(ofHeat);
        used.addAll(StrongFoam.IDS);
        used.add(SegmentCalculator.POSTURAL_CHANGE);
        this.quantitiesUsed = Collections.unmodifiableSet(used);
        this.strongFoam = StrongFoam.of(knowledge);
        new TechniqueChecks(knowledge, heat.model().devices()).check();
    }

    /**
     * Models that remember heat settings together with every other of this process that has the same constants.
     *
     * @throws org.tunica.casefile.FaultyInput with everything that a technique lacks to be computed
     */
    public static Physics sharing(Knowledge knowledge) {
        return new Physics(knowledge, SharedHeat.of(new Physics(knowledge).heatDigest()));
    }

    /** Ids of the quantities the models take from knowledge/, next to those of each technique. */
    public Set<String> quantitiesUsed() {
        return quantitiesUsed;
    }

    /**
     * {@code sha256:} and the digest over every constant a search for a heat setting rests on. Two releases with the same
     * find the same settings.
     */
    public String heatDigest() {
        return heatNumbers.digest();
    }

    /** Maps of heat settings. */
    public HeatWindows heatWindows() {
        return new HeatWindows(knowledge, heat);
    }

    /** What heat that was given did. */
    public HeatGiven heatGiven() {
        return new HeatGiven(knowledge, heat);
    }

    /** What is computed for a segment whatever the technique; no heat model runs. */
    public SegmentNumbers segment(CaseFile caseFile, Segment segment) {
        return new SegmentCalculator(knowledge).numbers(caseFile, segment);
    }

    /** Computes the numbers of one segment of a case. */
    public Derived derive(CaseFile caseFile, Segment segment) {
        return derive(caseFile, segment, heat::outlook);
    }

    /** The same without running the heat model: what it has not found before is left unknown and named. */
    public DerivedSoFar deriveSoFar(CaseFile caseFile, Segment segment) {
        FoundSoFar found = new FoundSoFar(heat);
        Derived derived = derive(caseFile, segment, found::outlook);
        return new DerivedSoFar(derived, found.awaited());
    }

    private Derived derive(CaseFile caseFile, Segment segment, Outlooks outlooks) {
        SegmentNumbers numbers = new SegmentCalculator(knowledge).numbers(caseFile, segment);
        OptionCalculator calculator = new OptionCalculator(heat, outlooks, strongFoam, caseFile, segment, numbers);
        // one technique does not depend on another, so the heat model may use every core
        Map<String, OptionNumbers> options = knowledge.techniques().values().parallelStream()
                .collect(Collectors.toConcurrentMap(Technique::id, calculator::numbers));
        return new Derived(numbers, Collections.unmodifiableMap(new TreeMap<>(options)));
    }

    /** The same, one technique after the other, for a caller who keeps every core busy already. */
    public Derived deriveInTurn(CaseFile caseFile, Segment segment) {
        return inTurn(caseFile, segment, heat::outlook);
    }

    /** What is computed without the heat model: what it would foresee stays unknown. */
    public Derived deriveWithoutHeat(CaseFile caseFile, Segment segment) {
        return inTurn(caseFile, segment, (device, of, at, wall, bloodless) -> Optional.empty());
    }

    /** What the heat model must be asked for a segment, one question a device, without asking it. */
    public List<HeatQuestion> heatQuestions(CaseFile caseFile, Segment segment) {
        List<HeatQuestion> questions = new ArrayList<>();
        inTurn(caseFile, segment, (device, of, at, wall, bloodless) -> {
            heat.question(device, of, at, wall, bloodless)
                    .filter(question -> heat.model().validity().wall().holds(question.wallMm()))
                    .ifPresent(questions::add);
            return Optional.empty();
        });
        return questions;
    }

    /** What the heat model foresees, from the memory or sought now. */
    public HeatOutlook heatOutlook(HeatQuestion question) {
        return heat.outlook(question);
    }

    /**
     * Computes the numbers of a segment that is not quite as measured, at the heat settings chosen for what was measured:
     * the depth that dies stays, the wall it must pass is another. What nerve and skin feel is spread over the errors of
     * their gaps already and stays too.
     *
     * @param chosen the numbers of the segment as measured
     */
    public Derived deriveAtSameSettings(CaseFile caseFile, Segment segment, Derived chosen) {
        return inTurn(caseFile, segment, new SameSettings(chosen)::outlook);
    }

    private Derived inTurn(CaseFile caseFile, Segment segment, Outlooks outlooks) {
        SegmentNumbers numbers = new SegmentCalculator(knowledge).numbers(caseFile, segment);
        OptionCalculator calculator = new OptionCalculator(heat, outlooks, strongFoam, caseFile, segment, numbers);
        Map<String, OptionNumbers> options = new TreeMap<>();
        knowledge
                .techniques()
                .values()
                .forEach(technique -> options.put(technique.id(), calculator.numbers(technique)));
        return new Derived(numbers, Collections.unmodifiableMap(options));
    }
}
