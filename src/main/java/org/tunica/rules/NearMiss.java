package org.tunica.rules;

import java.util.List;
import org.tunica.casefile.UcumWords;
import org.tunica.knowledge.GlossaryField;
import org.tunica.knowledge.Quantity;

/**
 * A rule that would have said something else of an option had one number been a little different.
 *
 * @param speaks whether the rule speaks now; the little difference would make it fall silent, or speak
 * @param field the number
 * @param recorded its value, in the unit of the field
 * @param limit the limit it came near to
 * @param turnsAt the value nearest to the one recorded at which the rule turns: the limit itself, or just beyond it
 * @param verdicts everything the rules say of the option at that value
 */
public record NearMiss(
        OptionKey option,
        Rule rule,
        boolean speaks,
        GlossaryField field,
        double recorded,
        Quantity limit,
        double turnsAt,
        List<Verdict> verdicts) {

    public NearMiss {
        verdicts = List.copyOf(verdicts);
    }

    /** The distance as a share of the limit, 0 when the value lies on it. */
    public double share() {
        return recorded == limit.value() ? 0 : Math.abs(recorded - limit.value()) / Math.abs(limit.value());
    }

    /** What the number would have to be, for example "the gap to the nerve under 5 mm (recorded 5.4 mm)". */
    public String wouldNeed() {
        String bound = Plain.number(limit.value()) + unit();
        return field.noun() + " " + side(bound) + " (" + (field.id().startsWith("derived.") ? "computed " : "recorded ")
                + Plain.number(recorded) + unit() + ")";
    }

    private String side(String bound) {
        boolean onTheLimit = turnsAt == limit.value();
        if (turnsAt < recorded) {
            return onTheLimit ? "at or under " + bound : "under " + bound;
        }
        return onTheLimit ? "at or over " + bound : "over " + bound;
    }

    private String unit() {
        return UcumWords.behind(limit.unit());
    }
}
