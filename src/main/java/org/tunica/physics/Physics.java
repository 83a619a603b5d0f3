package org.tunica.physics;

import java.util.Collections;
import java.util.Map;
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
    private final Set<String> quantitiesUsed;

    /** The seed of every draw. */
    public static final long SEED = 1;

    /**
     * Models that take their constants from this knowledge.
     *
     * @throws org.tunica.casefile.FaultyInput with everything that a technique lacks to be computed
     */
    public Physics(Knowledge knowledge) {
        this.knowledge = knowledge;
        Set<String> used = new TreeSet<>(DoseLimits.IDS);
        used.addAll(StrongFoam.IDS);
        used.add(SegmentCalculator.POSTURAL_CHANGE);
        this.heat = new HeatPlanner(knowledge, id -> {
            used.add(id);
            return knowledge.value(id);
        });
        this.quantitiesUsed = Collections.unmodifiableSet(used);
        this.strongFoam = StrongFoam.of(knowledge);
        new TechniqueChecks(knowledge, heat.model().devices()).check();
    }

    /** Ids of the quantities the models take from knowledge/, next to those of each technique. */
    public Set<String> quantitiesUsed() {
        return quantitiesUsed;
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

    /**
     * Computes the numbers of a segment that is not quite as measured, at the heat settings chosen for what was measured:
     * the depth that dies stays, the wall it must pass is another. What nerve and skin feel is spread over the errors of
     * their gaps already and stays too.
     *
     * @param chosen the numbers of the segment as measured
     */
    public Derived deriveAtSameSettings(CaseFile caseFile, Segment segment, Derived chosen) {
        SegmentNumbers numbers = new SegmentCalculator(knowledge).numbers(caseFile, segment);
        OptionCalculator calculator =
                new OptionCalculator(heat, new SameSettings(chosen)::outlook, strongFoam, caseFile, segment, numbers);
        Map<String, OptionNumbers> options = new TreeMap<>();
        knowledge
                .techniques()
                .values()
                .forEach(technique -> options.put(technique.id(), calculator.numbers(technique)));
        return new Derived(numbers, Collections.unmodifiableMap(options));
    }
}
