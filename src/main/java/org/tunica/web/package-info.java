/**
 * Tunica over HTTP: for people who sign in, for programs, and for record systems.
 *
 * <p>In go the front door {@link org.tunica.Tunica}, the store and {@link org.tunica.web.ServerSettings}; out comes a running
 * {@link org.tunica.web.WebServer}. Everything of the web framework lives here and is never loaded by the other commands.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li>{@link org.tunica.web.AccessRules} and the table in {@link org.tunica.web.Permission} say who may do what; what
 *       stands nowhere is refused, and {@code RoleTableTest} asks every endpoint the server knows of itself.
 *   <li>Advice and plans of which nothing is kept need no sign-in where the settings say so, or where the server keeps
 *       nothing; then for programs on this machine alone, never for a page in a browser.
 *   <li>Without TLS or a trusted proxy it listens on loopback alone; it answers only under names that are its own.
 *   <li>Sessions live in the process, or in the database where the store is one that several servers share; then so do the
 *       tokens that were seen, and a request may go to any server. Locks after wrong passwords stand with the user, so they
 *       hold everywhere; rates are counted by each server for itself, so two let through twice as many. The link of the first
 *       start opens at the server that printed it. Each request looks up the user anew, so that roles taken away are gone at once, on
 *       every server of the same store. Somebody of the hospital keeps the roles of the sign-in until the session ends.
 *   <li>A change says what it saw ({@code If-Match}); every look at a case is a row of the audit trail.
 *   <li>A note bears the number of its record of delivery. It is kept as the page people read; the PDF is made from it.
 *   <li>The log is one JSON object a line and quotes nothing that was sent: {@link org.tunica.web.LogLines}. It tells the
 *       head of the audit trail at start and stop and once a day.
 *   <li>Pages are made of the templates in {@code src/main/jte}, which the build turns into classes of this package; what they
 *       share is in {@code frame}, and pages of one kind of reader have a package of their own, such as {@code couch}.
 * </ul>
 *
 * <p>Record systems ({@code /cds-services}, {@code /fhir}) stand apart from people: {@link RecordSystems} is what
 * a site says of them, {@code CallerRules} lets in whose signed token {@code callers} accepts, and every refusal has the same
 * bytes. Of a call nothing is stored but feedback. {@code AdviceInTime} answers within the time a site allows: what is computed
 * by then is told, a technique whose heat is still computed is neither ranked nor judged, and the rest goes on behind. The last
 * 64 cases so asked for are remembered in memory for ten minutes, without any name, so that the order a minute after the
 * chart is answered at once. Everything that can be asked stands in {@code web/openapi.yaml}, and a test holds it against the
 * running server.
 */
@NullMarked
package org.tunica.web;

import org.jspecify.annotations.NullMarked;
