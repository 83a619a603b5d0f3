package org.tunica.watching;

import java.util.List;

/**
 * A number in use that nobody checked against a source.
 *
 * @param value with its unit
 * @param rules ids of the rules that name it; empty when only a model reads it
 */
public record UnverifiedNumber(String id, String says, String value, String source, List<String> rules) {
    public UnverifiedNumber {
        rules = List.copyOf(rules);
    }
}
