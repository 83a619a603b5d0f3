/**
 * The front door: wires the domain together and has one method per thing a user can ask.
 *
 * <p>Entry type: {@link org.tunica.Tunica}. Home of JSON writing and of the JSON Schemas.
 */
@NullMarked
package org.tunica;

import org.jspecify.annotations.NullMarked;
