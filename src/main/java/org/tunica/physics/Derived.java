package org.tunica.physics;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;

/**
 * Everything computed for one segment. Immutable.
 *
 * @param segment what holds whatever the technique
 * @param options by technique id, in order of id
 */
public record Derived(SegmentNumbers segment, Map<String, OptionNumbers> options) {
    /** Ids of the quantities the computation takes from knowledge/, next to those of each technique. */
    public static final List<String> IDS = List.of(SegmentCalculator.POSTURAL_CHANGE);

    /** Computes the numbers of one segment of a case with the constants of the knowledge in use. */
    public static Derived of(Knowledge knowledge, CaseFile caseFile, Segment segment) {
        SegmentNumbers numbers = new SegmentCalculator(knowledge).numbers(caseFile, segment);
        OptionCalculator calculator = new OptionCalculator(caseFile, segment, numbers);
        Map<String, OptionNumbers> options = new TreeMap<>();
        knowledge.techniques().forEach((id, technique) -> options.put(id, calculator.numbers(technique)));
        return new Derived(numbers, Collections.unmodifiableMap(options));
    }
}
