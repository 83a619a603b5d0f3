package org.tunica.couch;

import java.util.List;

/**
 * Fields of the form that belong together.
 *
 * @param path of what they are part of
 * @param usual fields that are seen at once
 * @param rare fields that are folded away
 * @param rareOpen whether something stands in one of those or is wrong with it
 * @param faults what is wrong with the whole
 */
public record FormBlock(
        String path, String title, List<FormField> usual, List<FormField> rare, boolean rareOpen, List<String> faults) {
    public FormBlock {
        usual = List.copyOf(usual);
        rare = List.copyOf(rare);
        faults = List.copyOf(faults);
    }

    /** By which the page refers to it. */
    public String id() {
        return FormField.id(path);
    }

    /** A leg and its segments. */
    public record Leg(FormBlock leg, List<FormBlock> segments) {
        public Leg {
            segments = List.copyOf(segments);
        }
    }
}
