/**
 * Tunica over HTTP: the same contracts as the files, for programs and, later, pages.
 *
 * <p>In goes the front door {@link org.tunica.Tunica}; out comes a running {@link org.tunica.web.WebServer}. It listens on
 * loopback alone until someone says how it is protected. Everything of the web framework lives here and is never loaded by
 * the other commands. Of what is asked here only the rules that a card rested on are stored.
 */
@NullMarked
package org.tunica.web;

import org.jspecify.annotations.NullMarked;
