/**
 * What a specialist sees of a segment and of a leg, as SVG text: the wall to scale with what each option kills of it, and
 * the leg with its segments.
 *
 * <p>In: the case and its advice. Out: SVG whose text stays text, and the same told as a table and as sentences. Entry types:
 * {@link org.tunica.drawing.WallStrip} and {@link org.tunica.drawing.LegMap}. May import casefile, knowledge, plan and wording. Shapes
 * carry classes, so that a page may colour them for a dark room, and colours of their own for where no page does. Nothing
 * is told by colour alone. The borders of the three coats inside a wall are schematic: only the whole wall is measured.
 */
@NullMarked
package org.tunica.drawing;

import org.jspecify.annotations.NullMarked;
