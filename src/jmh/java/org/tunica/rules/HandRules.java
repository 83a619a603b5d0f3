package org.tunica.rules;

import java.util.List;
import java.util.Map;
import org.tunica.knowledge.GlossaryField;

/** Rules as an engineer would write them by hand; {@link HandWriter} writes one. */
public interface HandRules {
    /** The facts of an option as fields of plain types. */
    Object read(OptionFacts facts, Map<String, GlossaryField> fields);

    /** What all rules say about one option, stage by stage. */
    void judge(Object option, List<Said> into);
}
