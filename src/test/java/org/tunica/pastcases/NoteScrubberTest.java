package org.tunica.pastcases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.Tunica;
import org.tunica.anonymity.Scrubber;

/** What the vocabulary of this release lets through. */
class NoteScrubberTest {
    private static final NoteScrubber SCRUBBER =
            new NoteScrubber(Tunica.shipped().knowledge());
    private static final double GOAL = 0.9;
    private static final int SEEDS = 100;
    private static final int NOTES = 500;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "Closed over 38 cm, no pain.|Closed over 38 cm, no pain.",
                "Treated by Dr Short at 10:30 in room 12|Treated by [...] at [...] in [...]",
                "Mrs Long said the leg was heavy|[...] the leg was heavy",
                "dr long treated the vein|[...] treated the vein",
                "Long saphenous vein, short stump|Long saphenous vein, short stump",
                "Rose Hill came with Will in May|[...] came with [...] in [...]",
                "wood, brown and may|[...] and [...]",
                "brown staining may be seen|brown staining may be seen",
                "wall 0.62 mm thick|[...] 0.62 mm thick",
                "vein wall 0.62 mm thick|vein wall 0.62 mm thick",
                "closed on the third of March|closed on the [...] of [...]",
                "aged 92 years|[...] years",
                "a vein of 5551234mm|a vein of [...]",
                "0 7 9 1 2 3|\"\"",
                "79mm 12mm 34mm 56mm of vein|[...] of vein",
                "lives in 12 W Elm Street|[...] in [...]",
                "heated at 12 W for 8 s/cm|heated at 12 W for 8 s/cm",
                "heated at 12.345 W|heated at [...]",
                "device SN 48213-A, lot B77|device [...]",
                "j0hn and J\u043ehn and jo\u200bhn had pain|[...] and [...] and [...] had pain",
                "vein/john.short@example.org|\"\"",
                "vein 82mm 05mm 3mm long|vein [...]",
                "seen in bed 58J then room 12 W|seen in [...] then [...]",
                "GSV 7-10 mm (standing)|GSV 7-10 mm (standing)",
                "TRUNK CLOSED|\"\"",
            })
    void textsAsTheyAreWritten_comeOutWithoutWhatCouldName(String text, String scrubbed) {
        assertEquals(scrubbed, String.join("", SCRUBBER.scrub(List.of(text))));
    }

    /** Our own sentences, never used to choose the words: what is kept of them must be enough to read. */
    @Test
    void honestSentences_keepNineWordsOfTen() throws IOException {
        int words = 0;
        int kept = 0;
        for (String sentence : heldOut()) {
            words += words(sentence);
            kept += words(String.join(" ", SCRUBBER.scrub(List.of(sentence))));
        }
        double share = (double) kept / words;
        assertTrue(share >= GOAL, kept + " of " + words + " words kept");
    }

    /** The same search as for the 500 notes, over a hundred times as many. */
    @Test
    @Tag("deep")
    void manyNotes_loseEveryIdentifier() {
        Leaks leaks = new Leaks(Tunica.shipped().knowledge().words());
        for (long seed = 1; seed <= SEEDS; seed++) {
            for (Planted.Note note : new Planted(seed).notes(NOTES)) {
                String kept = String.join(" ", SCRUBBER.scrub(List.of(note.text())));
                assertEquals(List.of(), leaks.in(kept, List.of(note.identifier())), note.text() + " -> " + kept);
            }
        }
    }

    private static int words(String text) {
        return (int) Arrays.stream(text.split(" "))
                .filter(word -> !word.isEmpty() && !word.startsWith(Scrubber.PLACEHOLDER))
                .count();
    }

    static List<String> heldOut() throws IOException {
        try (InputStream in = NoteScrubberTest.class.getResourceAsStream("held-out-sentences.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .toList();
        }
    }
}
