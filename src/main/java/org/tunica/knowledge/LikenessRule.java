package org.tunica.knowledge;

/**
 * How one attribute of two treated segments is compared and how much it counts.
 *
 * @param id for example {@code similar.relaxed-wall}
 * @param says the attribute in words
 * @param field the name of the value compared
 * @param weight how much it counts among the others
 */
public record LikenessRule(
        String id, String says, String field, double weight, Comparison comparison, Provenance provenance) {}
