/**
 * Pages of past cases: those that wait for somebody to look at them, and the results of those that are released.
 *
 * <p>In: a store and the rules in force. Out: pages. Entry type: {@link org.tunica.library.LibraryConfiguration}; {@link
 * org.tunica.library.Results} is also asked by programs.
 *
 * <p>Decisions. A case that waits may still tell who it is, so it is shown to those alone who may open cases, and every look
 * leaves its row. It is released from the page that shows it whole, by the digest of what was shown. Results hold no small
 * group and are open to everybody who has a part in treating, deciding or governing. Before anything is released there are
 * results of made-up cases alone, and only for whoever asks for them.
 *
 * <p>May import the front door, {@code archive}, {@code casefile}, {@code couch}, {@code frame}, {@code invented}, {@code
 * knowledge}, {@code outcomes}, {@code paper}, {@code pastcases}, {@code store}.
 */
@NullMarked
package org.tunica.library;

import org.jspecify.annotations.NullMarked;
