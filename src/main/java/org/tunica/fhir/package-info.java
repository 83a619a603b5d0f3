/**
 * Patient records in and advice out, in FHIR R4 and CDS Hooks 2.0, as plain JSON trees; no connection is made here.
 *
 * <p>In: a {@code Bundle} or a list of resources, and a {@link org.tunica.fhir.Site} that says what the room holds. Out: a
 * {@link org.tunica.fhir.Translated} case with everything that could not be used and when each number was measured; the
 * advice as resources ({@link org.tunica.fhir.AdviceResources}); answers to hooks ({@link org.tunica.fhir.HookService}).
 * Entry types: {@link org.tunica.fhir.FhirTranslator} and {@link org.tunica.fhir.HookService}. May import the front door and
 * the records it hands out. Scenarios: {@code features/plugin/}.
 *
 * <p><b>How a scan stands in a record.</b> One {@code Observation} with code {@code urn:tunica:measure|segment} is one
 * segment. Its {@code identifier} (system {@code urn:tunica:segment}), else its id, names it. Its {@code bodySite} codes
 * tell vein, level and side, or components with the codes {@code vein}, {@code level} and {@code side} do: R4 has no element
 * for the side. What was measured stands in {@code component}s, or in Observations of their own that {@code hasMember} names,
 * each then with its own date. What belongs to a leg (CEAP class, pressures, deep veins) is an Observation with a side; what
 * belongs to the patient one without. The codes are the words of {@link org.tunica.fhir.Measure}; a site maps its own to
 * them. Of several values the newest counts.
 *
 * <p>Decisions. The translator builds a case tree for the one case reader. A list nobody sent is unknown, even if called complete.
 */
@NullMarked
package org.tunica.fhir;

import org.jspecify.annotations.NullMarked;
