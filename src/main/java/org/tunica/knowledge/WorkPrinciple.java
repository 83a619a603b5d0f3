package org.tunica.knowledge;

/**
 * Why one piece of work comes before another in a session.
 *
 * @param says in words for the plan
 * @param source id of a source
 * @param standing how well it is supported
 * @param change number of the change record that brought it
 */
public record WorkPrinciple(String id, String says, String source, Standing standing, String change) {}
