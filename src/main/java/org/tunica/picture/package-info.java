/**
 * A heat window for the eye: the map of power by pull-back, its table and its words.
 *
 * <p>In: the window of a segment. Out: SVG or PNG, and the words and the table that a text shows as well. Entry type:
 * {@link org.tunica.picture.WindowPicture}. May import casefile, heat, physics, and plan for the release and the
 * caution. Home of the chart library and of the SVG writer. Reads no file, writes none.
 */
@NullMarked
package org.tunica.picture;

import org.jspecify.annotations.NullMarked;
