package org.tunica.governance;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What an author says of a release that is to be built.
 *
 * @param authors user names of everybody who wrote what is new in it
 * @param changes numbers of the change records that are new in it
 * @param effectiveFrom first day it may be in force, UTC
 * @param effectiveTo last day it may be in force, UTC
 * @param reviewBy day by which it is to be looked at again
 */
public record ReleaseIntent(
        SemanticVersion version,
        String title,
        List<String> authors,
        List<String> changes,
        Optional<LocalDate> effectiveFrom,
        Optional<LocalDate> effectiveTo,
        LocalDate reviewBy) {
    public ReleaseIntent {
        authors = authors.stream().distinct().sorted().toList();
        changes = changes.stream().distinct().sorted().toList();
    }
}
