package org.tunica.firmness;

import java.util.function.DoublePredicate;

/**
 * Between which two values of one measurement the place of the leader is lost. Values are tried as they are told, to three
 * digits, so that what is said of them is what was asked.
 *
 * @param held the nearest value tried at which it still leads
 * @param lost the nearest value tried at which it does not
 */
record Bracket(double held, double lost) {
    /** The same with the step between the two halved some times, or until no value to tell lies between them. */
    Bracket halved(int times, DoublePredicate turns) {
        Bracket found = this;
        for (int i = 0; i < times; i++) {
            double middle = Shares.readable((found.held + found.lost) / 2);
            if (middle == found.held || middle == found.lost) {
                return found;
            }
            found = turns.test(middle) ? new Bracket(found.held, middle) : new Bracket(middle, found.lost);
        }
        return found;
    }
}
