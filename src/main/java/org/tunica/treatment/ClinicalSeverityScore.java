package org.tunica.treatment;

import java.util.EnumMap;
import java.util.Map;
import org.tunica.casefile.Word;

/**
 * The revised venous clinical severity score: ten items of 0 to 3, total 0 to 30 (S-0083, read at second hand). Absolute
 * change is reported; no drop is established as the one that matters.
 *
 * @param items every item with its grade
 */
public record ClinicalSeverityScore(Map<Item, Integer> items) {
    private static final int WORST = 3;

    public ClinicalSeverityScore {
        for (Item item : Item.values()) {
            if (!items.containsKey(item)) {
                throw new IllegalArgumentException("items must hold " + item + ", got " + items.keySet());
            }
            Checked.within("items." + item, items.get(item), 0, WORST);
        }
        items = Map.copyOf(items);
    }

    /** A score with the same grade in every item. */
    public static ClinicalSeverityScore ofAll(int grade) {
        Map<Item, Integer> items = new EnumMap<>(Item.class);
        for (Item item : Item.values()) {
            items.put(item, grade);
        }
        return new ClinicalSeverityScore(items);
    }

    /** Sum of the items, 0 to 30. */
    public int total() {
        return items.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Points gained since an earlier score; a negative number is a relief. */
    public int changeSince(ClinicalSeverityScore earlier) {
        return total() - earlier.total();
    }

    /** What is graded. */
    public enum Item implements Word {
        PAIN,
        VARICOSE_VEINS,
        VENOUS_OEDEMA,
        PIGMENTATION,
        INFLAMMATION,
        INDURATION,
        NUMBER_OF_ACTIVE_ULCERS,
        LONGEST_ULCER_DURATION,
        LARGEST_ULCER_SIZE,
        COMPRESSION_USE
    }
}
