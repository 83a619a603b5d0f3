package org.tunica.knowledge;

/**
 * A sentence for people that the program looks up by its id: why one piece of work comes before another, what is done
 * about a clot.
 *
 * @param says in words for the reader
 * @param source id of a source
 * @param standing how well it is supported
 * @param change number of the change record that brought it
 */
public record Statement(String id, String says, String source, Standing standing, String change) {}
