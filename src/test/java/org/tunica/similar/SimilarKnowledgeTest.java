package org.tunica.similar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;

/** Faults of knowledge/similarity.yaml are told all at once, each with its file and key. */
class SimilarKnowledgeTest {
    private static final String FILE = "knowledge/similarity.yaml";
    private static final String AT = FILE + ": ";

    @Test
    void faultsOfForm_areToldAllAtOnce() {
        assertEquals(
                Set.of(
                        AT + "similar.relaxed-wall.weight",
                        AT + "similar.relaxed-lumen.exponent",
                        AT + "similar.nerve-gap.unit",
                        AT + "similar.vein.alike[0].likeness",
                        AT + "similar.level.colour",
                        AT + "similar.settings.source"),
                faults(
                        "    - { words: [great-saphenous, anterior-accessory, posterior-accessory], likeness: 0.7 }",
                        "    - { words: [great-saphenous, anterior-accessory, posterior-accessory], likeness: 1.7 }",
                        "  weight: 3\n  source: S-0901\n  status: local\n  since: 2026-01-01\n  change: \"0060\"\n  note: the wall",
                        "  weight: 0\n  source: S-0901\n  status: local\n  since: 2026-01-01\n  change: \"0060\"\n  note: the wall",
                        "  range: 10\n  shape: exponent\n  exponent: 2",
                        "  range: 10\n  shape: linear\n  exponent: 2",
                        "  field: nerveGapMm\n  kind: numeric\n  unit: mm",
                        "  field: nerveGapMm\n  kind: numeric\n  unit: cm",
                        "  says: level\n",
                        "  says: level\n  colour: blue\n",
                        "  weight: 2\n  source: S-0901\n  status: local\n  since: 2026-01-01\n  change: \"0060\"\n  note: a linear",
                        "  weight: 2\n  source: S-9901\n  status: local\n  since: 2026-01-01\n  change: \"0060\"\n  note: a linear"));
    }

    @Test
    void wordsAndFieldsThatDoNotExist_areToldAllAtOnce() {
        assertEquals(
                Set.of(
                        AT + "similar.course.steps",
                        AT + "similar.course.steps.winding",
                        AT + "similar.technique.alike[7]",
                        AT + "similar.position.field",
                        AT + "position",
                        AT + "similar.depth-to-skin.range",
                        AT + "similar.settings.ways.power-and-pullback",
                        AT + "similar.settings.ways.power-and-pullback.powerW"),
                faults(
                        "straight: 0, winding: 1",
                        "straight: 0, windy: 1",
                        "words: [foam-polidocanol, foam-sts], likeness",
                        "words: [foam-polidocanol, foam-st], likeness",
                        "field: position",
                        "field: colour",
                        "  range: 20\n  upTo: 30",
                        "  range: 20000\n  upTo: 30",
                        "      powerW: {",
                        "      powersW: {"));
    }

    private static Set<String> faults(String... changes) {
        TreeMap<String, String> texts = new TreeMap<>(Bundle.shipped().texts());
        String text = texts.get(FILE);
        for (int i = 0; i < changes.length; i += 2) {
            String changed = text.replace(changes[i], changes[i + 1]);
            if (changed.equals(text)) {
                throw new AssertionError("not in the file: " + changes[i]);
            }
            text = changed;
        }
        texts.put(FILE, text);
        FaultyInput faulty = assertThrows(FaultyInput.class, () -> Similarity.check(Knowledge.of(Bundle.of(texts))));
        List<String> places = faulty.faults().stream().map(Fault::place).toList();
        return new TreeSet<>(places);
    }
}
