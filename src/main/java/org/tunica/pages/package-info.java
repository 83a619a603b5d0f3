/**
 * What pages show, as records without layout: an advice segment by segment, with its pictures and every reason; a setting of a
 * heat device and what it does, a plan against its limits, how it went.
 *
 * <p>In: a case and its advice. Out: records that templates write out. Entry type: {@link org.tunica.pages.AdviceView}. May
 * import casefile, knowledge, heat, physics, plan, session, treatment, wording and drawing. Knows no server and no template.
 */
@NullMarked
package org.tunica.pages;

import org.jspecify.annotations.NullMarked;
