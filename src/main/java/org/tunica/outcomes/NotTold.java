package org.tunica.outcomes;

import java.util.OptionalInt;
import org.tunica.treatment.ClosureDefinition;

/**
 * A group that is there and not told of.
 *
 * @param says the technique in words
 * @param fewerThan it has fewer past cases than this; absent when it is hidden only because its size would tell another's
 */
public record NotTold(String technique, String says, ClosureDefinition closure, OptionalInt fewerThan) {}
