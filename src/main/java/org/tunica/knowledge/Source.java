package org.tunica.knowledge;

import java.util.Optional;
import java.util.OptionalInt;
import org.tunica.casefile.Word;

/**
 * Where a figure comes from.
 *
 * @param id for example {@code S-0034}
 * @param cites journal, year, volume, pages, or the name of a guideline
 * @param year of publication, absent for common practice and own definitions
 * @param read how much of it was read for this project
 * @param about what is taken from it, in our own words
 */
public record Source(String id, String cites, Optional<String> doi, OptionalInt year, Read read, String about) {
    /** How much of a source was read. */
    public enum Read implements Word {
        FULL_TEXT("full text"),
        ABSTRACT("abstract"),
        SECONDARY("secondary"),
        MEMORY("memory"),
        NONE("none");

        private final String word;

        Read(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }
    }
}
