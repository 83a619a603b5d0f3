/**
 * The command line: the only {@code main}. Home of picocli.
 *
 * <p>In: arguments and files. Out: text or JSON on standard output, a picture or a proposal in a file, faults on standard
 * error, and an exit code: 0 done, 2 faulty input or wrong usage, 1 anything else. Entry type: {@link
 * org.tunica.cli.Main}. May import the front door and the records, also those of {@code picture}.
 *
 * <p>Decisions. A server starts anew in its process when another release is in force. Of several over one database one does so
 * at a time, by a row it holds for at most a minute; whoever waited for a minute does not wait on, because advice by a release
 * that was rolled back is worse than some seconds without any.
 */
@NullMarked
package org.tunica.cli;

import org.jspecify.annotations.NullMarked;
