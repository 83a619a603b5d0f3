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
    private final Set<String> quantitiesUsed =
            Collections.synchronizedSet(new TreeSet<>(Set.of(SegmentCalculator.POSTURAL_CHANGE)));

    /** Models that take their constants from this knowledge. */
    public Physics(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.heat = new HeatPlanner(knowledge, this::constant);
        this.strongFoam = StrongFoam.of(knowledge);
        quantitiesUsed.addAll(StrongFoam.IDS);
        quantitiesUsed.addAll(DoseLimits.IDS);
    }

    private double constant(String id) {
        quantitiesUsed.add(id);
        return knowledge.value(id);
    }

    /** Ids of the quantities the models take from knowledge/, next to those of each technique. */
    public Set<String> quantitiesUsed() {
        return Collections.unmodifiableSet(quantitiesUsed);
    }

    /** Maps of heat settings. */
    public HeatWindows heatWindows() {
        return new HeatWindows(knowledge, heat);
    }

    /** Computes the numbers of one segment of a case. */
    public Derived derive(CaseFile caseFile, Segment segment) {
        SegmentNumbers numbers = new SegmentCalculator(knowledge).numbers(caseFile, segment);
        OptionCalculator calculator = new OptionCalculator(heat, strongFoam, caseFile, segment, numbers);
        // one technique does not depend on another, so the heat model may use every core
        Map<String, OptionNumbers> options = knowledge.techniques().values().parallelStream()
                .collect(Collectors.toConcurrentMap(Technique::id, calculator::numbers));
        return new Derived(numbers, Collections.unmodifiableMap(new TreeMap<>(options)));
    }
}
