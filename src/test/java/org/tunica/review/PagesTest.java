package org.tunica.review;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tunica.knowledge.Bundle;

class PagesTest {
    @Test
    void write() throws Exception {
        RuleReview.of(Bundle.shipped())
                .writeBook(Path.of("target/rule-book"), Optional.of(Path.of("features")), LocalDate.of(2026, 11, 25));
    }
}
