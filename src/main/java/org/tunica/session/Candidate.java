package org.tunica.session;

import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.plan.OptionAdvice;

/** A ranked technique for a segment with what it takes of a session. */
record Candidate(Limb limb, Segment segment, OptionAdvice option, Demand demand, int worth) {}
