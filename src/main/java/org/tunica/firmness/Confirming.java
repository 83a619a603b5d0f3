package org.tunica.firmness;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.tunica.casefile.PlausibleRange;
import org.tunica.plan.FirmnessAdvice.Change;

/**
 * Holds a change that was found with the heat settings kept against the whole engine, which seeks every setting anew. Where
 * the two disagree, the search goes on with the whole engine, at most {@link #MOST_ASKED} times in all: one answer may take
 * seconds. Settings come in steps, so a place that is lost and won again between two values tried may be passed over.
 */
final class Confirming {
    /** Two to confirm, three to find the other side, three to halve. */
    static final int MOST_ASKED = 8;

    private static final int HALVINGS = 3;
    private static final int STEPS_OUT = MOST_ASKED - 2 - HALVINGS;

    private final PlausibleRange range;
    private final DoubleFunction<Optional<String>> whole;
    private final Map<Double, Optional<String>> asked = new HashMap<>();
    private final Optional<String> leads;

    /**
     * @param range what may be entered for the measurement
     * @param leads the technique that leads as measured
     * @param whole who leads with another value of the measurement, every setting sought anew
     */
    Confirming(PlausibleRange range, Optional<String> leads, DoubleFunction<Optional<String>> whole) {
        this.range = range;
        this.leads = leads;
        this.whole = whole;
    }

    Change of(Change found) {
        if (turns(found.holdsAt())) {
            return moved(found, new Bracket(found.recorded(), found.holdsAt()).halved(HALVINGS, this::turns));
        }
        if (turns(found.at())) {
            return found.sought(Change.Sought.CONFIRMED, found.at(), found.holdsAt(), first(found.at()));
        }
        return further(found);
    }

    /** Outwards in steps of half the way so far, within what may be entered. */
    private Change further(Change found) {
        double step = (found.at() - found.recorded()) / 2;
        double held = found.at();
        for (int i = 1; i <= STEPS_OUT; i++) {
            double tried = Math.max(range.min(), Math.min(range.max(), Shares.readable(found.at() + i * step)));
            if (tried == held) {
                break;
            }
            if (turns(tried)) {
                return moved(found, new Bracket(held, tried).halved(HALVINGS, this::turns));
            }
            held = tried;
        }
        return found.sought(Change.Sought.NOT_FOUND, found.at(), held, found.leads());
    }

    private Change moved(Change found, Bracket bracket) {
        return found.sought(Change.Sought.SOUGHT_ANEW, bracket.lost(), bracket.held(), first(bracket.lost()));
    }

    private boolean turns(double value) {
        return !first(value).equals(leads);
    }

    private Optional<String> first(double value) {
        return asked.computeIfAbsent(value, whole::apply);
    }
}
