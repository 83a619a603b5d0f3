package org.tunica.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;

/** A worked row of the evidence on aliquots of adhesive, by hand. */
class AdhesiveTest {
    private static final Knowledge KNOWLEDGE = Knowledge.of(Bundle.shipped());

    /** S-0022, from memory, unverified: two 1 cm apart, then one every 3 cm; 0.1 mL each. The tip starts 5 cm off. */
    @Test
    void row40_aliquotsOfAdhesive() {
        Adhesive adhesive = Adhesive.of(KNOWLEDGE.technique("adhesive"), KNOWLEDGE);
        double fromTheJunctionCm = KNOWLEDGE.value("adhesive.tip.start");
        assertEquals(
                List.of(5.0, 6.0, 9.0, 12.0, 15.0, 18.0, 21.0, 24.0, 27.0, 30.0, 33.0, 36.0, 39.0),
                adhesive.places(40 - fromTheJunctionCm).stream()
                        .map(place -> place + fromTheJunctionCm)
                        .toList());
        assertEquals(1.3, adhesive.volumeMl(40 - fromTheJunctionCm), 1e-9);
    }
}
