package org.tunica.review;

import java.util.BitSet;
import java.util.List;

/** What facts must be like, as a tree over the cells of variables. */
sealed interface Demand {
    /** A variable lies in one of some cells. */
    record Fits(Variable variable, BitSet cells) implements Demand {}

    /** All of some demands. */
    record All(List<? extends Demand> parts) implements Demand {}

    /** At least one of some demands. */
    record Any(List<? extends Demand> parts) implements Demand {}

    /** Some other segment of the leg fits. */
    record Somewhere(Fits fits) implements Demand {}

    /** Every other segment of the leg fits. */
    record Everywhere(Fits fits) implements Demand {}
}
