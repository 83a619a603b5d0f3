/**
 * Tunica over HTTP: the same contracts as the files, for programs and, later, pages.
 *
 * <p>In goes the front door {@link org.tunica.Tunica}; out comes a running {@link org.tunica.web.WebServer}. It listens on
 * loopback alone until someone says how it is protected. Everything of the web framework lives here and is never loaded by
 * the other commands. Nothing that is asked here is stored.
 *
 * <p>Record systems ({@code /cds-services}, {@code /fhir}) stand apart from people: {@link RecordSystems} is what
 * a site says of them, {@code CallerRules} lets in whose signed token {@code callers} accepts, and every refusal has the same
 * bytes. Of a call nothing is stored but feedback. {@code AdviceInTime} answers within the time a site allows: what is computed
 * by then is told, a technique whose heat is still computed is neither ranked nor judged, and the rest goes on behind. The last
 * {@code 64} cases so asked for are remembered in memory for ten minutes, without any name, so that the order a minute after the
 * chart is answered at once. Everything that can be asked stands in {@code web/openapi.yaml}, and a test holds it against the
 * running server.
 */
@NullMarked
package org.tunica.web;

import org.jspecify.annotations.NullMarked;
