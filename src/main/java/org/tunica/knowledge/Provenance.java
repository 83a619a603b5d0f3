package org.tunica.knowledge;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Where a number of knowledge/ comes from.
 *
 * @param source id of a source
 * @param standing how well it is supported
 * @param since the day it entered
 * @param change number of the change record that brought it
 */
public record Provenance(String source, Standing standing, LocalDate since, String change, Optional<String> note) {}
