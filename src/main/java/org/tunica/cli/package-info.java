/**
 * The command line: the only {@code main}. Home of picocli.
 *
 * <p>In: arguments and files. Out: text or JSON on standard output, a picture or a proposal in a file, faults on standard
 * error, and an exit code: 0 done, 2 faulty input or wrong usage, 1 anything else. Entry type: {@link
 * org.tunica.cli.Main}. May import the front door and the records, also those of {@code picture}.
 */
@NullMarked
package org.tunica.cli;

import org.jspecify.annotations.NullMarked;
