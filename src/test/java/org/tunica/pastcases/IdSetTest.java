package org.tunica.pastcases;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashSet;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class IdSetTest {
    /** Against the set of the language, with near ids and repeats. */
    @Test
    void add_tellsWhetherAnIdIsNew() {
        Random random = new Random(1);
        IdSet ids = new IdSet();
        Set<String> other = new HashSet<>();
        for (int i = 0; i < 60_000; i++) {
            String id = random.nextBoolean()
                    ? String.format(Locale.ROOT, "p-%016x%08x", random.nextLong(), random.nextInt())
                    : String.format(Locale.ROOT, "p-%023x%x", random.nextInt(20_000), random.nextInt(16));
            assertEquals(other.add(id), ids.add(id), id);
        }
    }
}
