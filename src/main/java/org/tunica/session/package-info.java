/**
 * One plan for the whole leg, or both: segments share local anaesthetic, sclerosant, foam, time, a generator and a
 * position.
 *
 * <p>In go a case and its advice; out comes a {@link org.tunica.session.SessionPlan}: one technique for every segment (or
 * why it waits), split into stages when one session cannot hold it, in an order of work with reasons, with the limit that
 * bound and what relaxing it would allow. Entry type: {@link org.tunica.session.SessionPlanner}. The constraint solver lives
 * here and nowhere else.
 *
 * <p>Decision. Amounts of a session are whole thousandths, takings rounded up and limits down, so a sum never passes a limit unseen.
 * One segment may take more foam than the routine ceiling by itself: rules judge that, and it then fills its session alone.
 */
@NullMarked
package org.tunica.session;

import org.jspecify.annotations.NullMarked;
