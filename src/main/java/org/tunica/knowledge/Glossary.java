package org.tunica.knowledge;

import java.util.Map;

/**
 * The closed vocabulary of rule sentences.
 *
 * @param fields by id, in file order
 * @param findings what stage 1 may find, id to words
 * @param settings what stage 5 may set, by id
 */
public record Glossary(
        Map<String, GlossaryField> fields, Map<String, String> findings, Map<String, SettingName> settings) {

    /** A setting by the words rules use for it, and its unit (UCUM). */
    public record SettingName(String id, String name, String unit) {}
}
