package org.tunica.knowledge;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tunica.casefile.FieldReader;

/**
 * What codes of other systems mean in words of a case, as written down: by the release in {@code knowledge/codes.yaml}, and
 * by a site that adds to it. Our own codes are the words themselves and need no entry.
 *
 * @param systems code systems by the name they have in the file
 * @param aliases codes of other systems for our words, in file order
 * @param overrideReasons why a person may set an advice aside, in the order to show them
 */
public record CodeFile(Map<String, CodeSystem> systems, List<Alias> aliases, List<OverrideReason> overrideReasons) {

    /** The id of the quantity above which an age is not told apart. */
    public static final String MOST_AGE = "record.age.most";

    public CodeFile {
        systems = Collections.unmodifiableMap(new TreeMap<>(systems));
        aliases = List.copyOf(aliases);
        overrideReasons = List.copyOf(overrideReasons);
    }

    /** Reads the entries of a file; what is wrong with them is noted where the reader notes it. */
    public static CodeFile read(FieldReader reader) {
        return CodeFileReader.read(reader);
    }

    /** A file in which nothing stands. */
    public static CodeFile empty() {
        return new CodeFile(Map.of(), List.of(), List.of());
    }

    /** This file and what another adds; a system of the same name is replaced, for a site switches systems on and off. */
    public CodeFile with(CodeFile other) {
        Map<String, CodeSystem> allSystems = new TreeMap<>(systems);
        allSystems.putAll(other.systems);
        List<Alias> allAliases = new ArrayList<>(aliases);
        allAliases.addAll(other.aliases);
        List<OverrideReason> allReasons = new ArrayList<>(overrideReasons);
        allReasons.addAll(other.overrideReasons);
        return new CodeFile(allSystems, allAliases, allReasons);
    }

    /**
     * A code system.
     *
     * @param uri its identity in a record
     * @param on whether its codes are read at all; a site switches on what it is licensed for
     */
    public record CodeSystem(String uri, boolean on) {}

    /**
     * A code of another system that means one of our words.
     *
     * @param kind what the word is about, for example {@code vein}
     * @param word the word
     * @param system name of the code system in the file
     * @param code the code, an id without its description
     * @param place where it stands, for messages
     */
    public record Alias(String kind, String word, String system, String code, String place) {}

    /**
     * Why a person may set an advice aside.
     *
     * @param system identity of the code system
     * @param code its code
     * @param says in our words
     */
    public record OverrideReason(String system, String code, String says) {}
}
