package org.tunica.rules;

import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Technique;
import org.tunica.physics.Derived;
import org.tunica.physics.OptionNumbers;

/** One technique considered for one segment of one limb of one case, with the numbers computed for it. */
public record Considered(CaseFile caseFile, Limb limb, Segment segment, Technique technique, Derived derived) {
    /** The name of the option. */
    public OptionKey key() {
        return new OptionKey(segment.ref(), technique.id());
    }

    OptionNumbers numbers() {
        return derived.options().get(technique.id());
    }
}
