package org.tunica.cluster;

import org.tunica.pastcases.PastCase;
import org.tunica.similar.CaseSource;

/** A source at one of whose cases something happens. */
record DisturbedSource(CaseSource whole, int at, Runnable then) implements CaseSource {
    @Override
    public boolean invented() {
        return whole.invented();
    }

    @Override
    public String says() {
        return whole.says();
    }

    @Override
    public String digest() {
        return whole.digest();
    }

    @Override
    public void each(Taker taker) {
        int[] seen = new int[1];
        whole.each((where, pastCase) -> {
            if (seen[0]++ == at) {
                then.run();
            }
            taker.take(where, pastCase);
        });
    }

    @Override
    public PastCase at(long where) {
        return whole.at(where);
    }
}
