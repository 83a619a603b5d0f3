package org.tunica.knowledge;

import java.util.List;
import java.util.stream.Stream;

/** Which files of knowledge/ hold what, by the start of their paths. */
final class KnowledgeFiles {
    static final String TECHNIQUES = "knowledge/techniques/";

    /** Quantities stand next to the folder of limits, too. */
    static final List<String> QUANTITIES = List.of(
            "knowledge/session",
            "knowledge/outcomes",
            "knowledge/follow-up.yaml",
            "knowledge/anonymity.yaml",
            "knowledge/limits/",
            "knowledge/doses",
            "knowledge/weights",
            "knowledge/criteria",
            "knowledge/tissue",
            "knowledge/heat-devices",
            "knowledge/posture");

    /** Numbers that are no quantities and that change records list, too. */
    private static final List<String> OTHER_LISTED =
            List.of("knowledge/rates", "knowledge/invented", "knowledge/similarity.yaml");

    private static final List<String> OTHERS = List.of(
            TECHNIQUES,
            "knowledge/sources",
            "knowledge/evidence/",
            "knowledge/conflicts",
            "knowledge/accepted",
            "knowledge/hazards",
            "knowledge/intended-use.yaml",
            "knowledge/measurements",
            "knowledge/work-order",
            "knowledge/after-care",
            "knowledge/plain/",
            "knowledge/codes.yaml",
            "knowledge/vocabulary.yaml",
            "knowledge/anonymity-fields.yaml",
            "knowledge/glossary.yaml",
            "knowledge/conditions.yaml",
            "knowledge/allergies.yaml");

    private KnowledgeFiles() {}

    /** Whether anything reads the file. */
    static boolean known(String path) {
        return holdsListedNumbers(path) || OTHERS.stream().anyMatch(path::startsWith);
    }

    /** Whether the entries of the file are numbers that a change record lists. */
    static boolean holdsListedNumbers(String path) {
        return Stream.concat(QUANTITIES.stream(), OTHER_LISTED.stream()).anyMatch(path::startsWith);
    }
}
