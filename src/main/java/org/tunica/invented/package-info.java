/**
 * A library of finished cases that nobody ever was: to try search, outcomes and anonymity before any clinic has cases of its own.
 *
 * <p>In go the distributions of {@code knowledge/invented.yaml}, the published rates of closure and a seed; out come past cases,
 * each marked as invented, each the same for its seed and number alone. The entry is
 * {@link org.tunica.invented.InventedLibrary}. Who was treated how, in which vein, follows shares that are mostly invented;
 * how many veins stay closed follows the published rates.
 */
@NullMarked
package org.tunica.invented;

import org.jspecify.annotations.NullMarked;
