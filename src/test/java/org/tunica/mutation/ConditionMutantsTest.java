package org.tunica.mutation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tunica.Tunica;
import org.tunica.knowledge.GlossaryField;
import org.tunica.knowledge.Quantity;
import org.tunica.rules.Conclusion;
import org.tunica.rules.Condition;

/** What is made of a condition, for forms that few rules use. */
class ConditionMutantsTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final GlossaryField REFLUX =
            TUNICA.knowledge().glossary().fields().get("segment.refluxSeconds");
    private static final Quantity LIMIT = TUNICA.knowledge().quantity("reflux.superficial.over");

    private static List<String> mutants(Condition condition) {
        return ConditionMutants.of(condition).values().stream()
                .map(instead -> String.join(
                        " and ", instead.stream().map(Condition::sentence).toList()))
                .toList();
    }

    @Test
    void betweenIsOpenedAndTightenedAtEachEndAndTurned() {
        String is = "the reflux time is ";
        String limit = " limit reflux.superficial.over";
        assertEquals(
                List.of(
                        is + "at least" + limit,
                        is + "at most" + limit,
                        is + "more than" + limit + " and " + is + "at most" + limit,
                        is + "at least" + limit + " and " + is + "less than" + limit,
                        is + "not between" + limit + " and" + limit),
                mutants(new Condition.Between(REFLUX, true, LIMIT, LIMIT)));
    }

    @Test
    void anotherSegmentIsTurnedMixedUpWithThisOneAndAskedWrongly() {
        String asked = "the reflux time is less than limit reflux.superficial.over";
        String another = "in another segment of this leg the reflux time is ";
        Condition.OnOption less = new Condition.Compared(REFLUX, Condition.Comparison.LESS, LIMIT);
        assertEquals(
                List.of(
                        "in no other segment of this leg " + asked,
                        asked,
                        another + "at most limit reflux.superficial.over",
                        another + "more than limit reflux.superficial.over",
                        another + "at least limit reflux.superficial.over"),
                mutants(new Condition.Elsewhere(true, less)));
    }

    @Test
    void whatAnEarlierStageSaidIsTurned() {
        assertEquals(List.of("there is no caution"), mutants(new Condition.Earlier(Conclusion.Kind.CAUTION, true)));
    }
}
