package org.tunica.similar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What an engine may reckon from marks is never less than the truth, whatever is known and whatever counts how much. */
class MarksTest {
    private static final double HAIR = 1e-9;

    @Property(tries = 300, seed = "20261130")
    void sumsOverMarks_areNeverLessThanTheTruth(@ForAll long seed) {
        Random random = new Random(seed);
        Profiles profiles = new Profiles(seed, 0.3);
        Map<Field, Double> weights = new HashMap<>();
        for (Field field : Field.values()) {
            weights.put(field, 0.1 + 3 * random.nextDouble());
        }
        Question question = new Question(Profiles.SIMILARITY.weighted(weights), profiles.next());
        for (int i = 0; i < 20; i++) {
            holds(question, profiles.next());
        }
        holds(question, question.profile());
    }

    private static void holds(Question question, Profile other) {
        List<String> bears = Marks.of(other);
        Set<String> once = new HashSet<>(bears);
        assertEquals(bears.size(), once.size());
        double most = sum(question.marks(0), once);
        double apart = sum(question.apart(), once);
        double known = question.weight() - apart;
        double likeness = question.likeness(other.values());
        assertTrue(known > -HAIR, "known " + known);
        assertTrue(most >= likeness * known - HAIR, most + " is less than " + likeness + " of " + known);
        assertTrue(most <= known + HAIR, most + " is more than all of " + known);
        assertEquals(0, misses(question, once, likeness), "nobody is left out by a likeness it has");
        assertEquals(most, sum(question.marks(likeness), once), HAIR, "nothing of it is left out by a likeness it has");
    }

    /** So much is asked of who must be nearly the same that few unlike ones are left. */
    @Property(tries = 50, seed = "20261201")
    void whatMustBeBorne_leavesOutWhoIsLessAlike(@ForAll long seed) {
        Profiles profiles = new Profiles(seed, 0.3);
        Question question = new Question(Profiles.SIMILARITY, profiles.next());
        int out = 0;
        int less = 0;
        for (int i = 0; i < 200; i++) {
            Profile other = profiles.next();
            less += question.likeness(other.values()) < 0.98 ? 1 : 0;
            out += misses(question, new HashSet<>(Marks.of(other)), 0.98) > 0 ? 1 : 0;
        }
        assertTrue(out <= less, out + " are left out, of which " + less + " are less alike");
        assertTrue(2 * out >= less, "only " + out + " are left out, of " + less + " that are less alike");
        assertTrue(question.mustBear(0).isEmpty());
    }

    private static long misses(Question question, Set<String> bears, double least) {
        return question.mustBear(least).stream()
                .filter(words -> words.stream().noneMatch(bears::contains))
                .count();
    }

    private static double sum(List<Question.Mark> marks, Set<String> bears) {
        return marks.stream()
                .filter(mark -> bears.contains(mark.word()))
                .mapToDouble(Question.Mark::most)
                .sum();
    }
}
