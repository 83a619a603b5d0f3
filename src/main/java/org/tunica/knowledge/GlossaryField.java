package org.tunica.knowledge;

import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Word;

/**
 * One thing a rule may ask about an option.
 *
 * @param place its place in the glossary, from 0
 * @param id for example {@code segment.depthToSkinMm}
 * @param name the subject of sentences about it (number, word, set)
 * @param verb what joins name and values; "is" for a word without one of its own
 * @param verbNot the denying verb
 * @param noun what is said to be "not recorded"
 * @param yes the whole sentence of a flag that holds
 * @param no the whole sentence of a flag that does not hold
 * @param unit UCUM code of a number
 * @param values the words allowed (word, set)
 */
public record GlossaryField(
        int place,
        String id,
        Kind kind,
        String name,
        String verb,
        String verbNot,
        String noun,
        String yes,
        String no,
        Optional<String> unit,
        List<String> values) {

    /** What kind of answer the field gives. */
    public enum Kind implements Word {
        NUMBER,
        WORD,
        FLAG,
        SET
    }
}
