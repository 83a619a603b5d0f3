package org.tunica.knowledge;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One way to close a vein, described by its physics.
 *
 * @param id for example {@code laser-1470-radial}
 * @param says in words for people
 * @param needs ids of fields without which the technique is not ranked
 * @param drugs sclerosant drugs of which one must be stocked; empty when none is used
 * @param generator the heat generator it runs on, in general words; techniques may share one
 * @param quantities numbers of the computed models, by their key in the file
 * @param settings ranges of settings, by setting id, in file order
 */
public record Technique(
        String id,
        String says,
        Family family,
        List<String> needs,
        List<String> drugs,
        Optional<String> generator,
        Map<String, Quantity> quantities,
        Map<String, SettingRange> settings,
        Optional<String> note) {

    /**
     * The number a model takes.
     *
     * @throws IllegalArgumentException when the technique does not bring it
     */
    public Quantity quantity(String key) {
        Quantity quantity = quantities.get(key);
        if (quantity == null) {
            throw new IllegalArgumentException("technique " + id + " has no quantity " + key);
        }
        return quantity;
    }
}
