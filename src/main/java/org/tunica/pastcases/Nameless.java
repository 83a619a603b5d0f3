package org.tunica.pastcases;

import java.util.LinkedHashMap;
import java.util.Map;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Faults;
import org.tunica.knowledge.Knowledge;

/** Takes the person out of an open case for colleagues who talk about it, by the same decisions as for past cases. */
public final class Nameless {
    private final Rounding rounding;
    private final Banding ages;
    private final Banding weights;

    /** By the numbers of a release. */
    public Nameless(Knowledge knowledge) {
        this.rounding = new Rounding(knowledge);
        this.ages = Banding.ofAge(knowledge);
        this.weights = Banding.ofWeight(knowledge);
    }

    /**
     * The same case without the person.
     *
     * @param id stands in place of its reference; nothing of the case may be in it
     */
    public NamelessCase of(CaseFile caseFile, String id) {
        Faults faults = new Faults();
        References references = new References(caseFile, faults);
        NamelessCase nameless = new NamelessCase(
                new CaseParts(rounding, references).of(caseFile, id),
                ages.of(caseFile.patient().ageYears()),
                weights.of(caseFile.patient().weightKg()));
        faults.throwIfAny("case");
        return nameless;
    }

    /** The name each segment gets, by the name it has. */
    public static Map<String, String> names(CaseFile caseFile) {
        References references = new References(caseFile, new Faults());
        Map<String, String> names = new LinkedHashMap<>();
        caseFile.limbs()
                .forEach(limb -> limb.segments()
                        .forEach(segment -> names.put(segment.ref(), references.of("segments", segment.ref()))));
        return names;
    }
}
