package org.tunica;

import java.util.List;
import org.tunica.pastcases.PastCase;
import org.tunica.similar.CaseSource;

/** A list of past cases as something to search; a case is asked for again by its place in the list. */
final class ListedCases implements CaseSource {
    private final String says;
    private final List<PastCase> cases;

    ListedCases(String says, List<PastCase> cases) {
        this.says = says;
        this.cases = List.copyOf(cases);
    }

    @Override
    public boolean invented() {
        return false;
    }

    @Override
    public String says() {
        return says;
    }

    @Override
    public String digest() {
        return Integer.toHexString(cases.hashCode());
    }

    @Override
    public void each(Taker taker) {
        for (int i = 0; i < cases.size(); i++) {
            taker.take(i, cases.get(i));
        }
    }

    @Override
    public PastCase at(long where) {
        return cases.get((int) where);
    }
}
