package org.tunica.archive;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import org.tunica.Tunica;
import org.tunica.casefile.FaultyInput;
import org.tunica.pastcases.EachCase;
import org.tunica.pastcases.PastCase;
import org.tunica.pastcases.Release;
import org.tunica.pastcases.WaitingCase;
import org.tunica.store.KeptPastCase;
import org.tunica.store.PastCaseShelf;
import org.tunica.store.PastCaseState;

/**
 * What of a shelf is needed at every look at it, brought up to its last change each time it is asked: the crowds of the released
 * cases, and by a number each what all of them say. Reading every case at every look would make a large shelf unusable.
 */
final class ShelfMemory {
    private static final String PERSON_AND_TREATMENT = "\"invented\":";
    private static final String HOW_IT_WENT = "\"followUp\":";

    private final Tunica tunica;
    private final PastCaseShelf shelf;
    private final Set<Long> told = new HashSet<>();
    private Release release;
    private long at;

    /** One was taken out since the crowds were counted; stays so until they are counted anew, whatever fails meanwhile. */
    private boolean gone;

    ShelfMemory(Tunica tunica, PastCaseShelf shelf) {
        this.tunica = tunica;
        this.shelf = shelf;
        this.release = tunica.pastCases().release(EachCase.NONE);
    }

    /** Where each waiting case would stand if all of them were released together. */
    synchronized List<Release.Place> places(List<WaitingCase> waiting) {
        catchUp();
        return release.places(waiting);
    }

    /** The past cases of waiting ones, all or none. */
    synchronized List<PastCase> released(List<WaitingCase> chosen) {
        catchUp();
        return release.of(chosen);
    }

    /** One on the shelf that says the same of the person and of what was done; how it went may have become longer since. */
    synchronized Optional<KeptPastCase> twin(String line, String id) {
        catchUp();
        String sought = told(line, id);
        if (!told.contains(number(sought))) {
            return Optional.empty();
        }
        AtomicReference<Optional<KeptPastCase>> twin = new AtomicReference<>(Optional.empty());
        ShelfRows.each(shelf, 0, Long.MAX_VALUE, one -> {
            if (!one.line().isEmpty() && told(one.line(), one.id()).equals(sought)) {
                twin.set(Optional.of(one));
            }
        });
        return twin.get();
    }

    private void catchUp() {
        ShelfRows.each(shelf, at, Long.MAX_VALUE, one -> {
            gone |= one.state() == PastCaseState.WITHDRAWN;
            if (!one.line().isEmpty()) {
                told.add(number(told(one.line(), one.id())));
            }
            if (one.state() == PastCaseState.RELEASED) {
                came(release, one);
            }
            at = one.stamp().auditNumber();
        });
        if (gone) {
            Release left = tunica.pastCases().release(EachCase.NONE);
            ShelfRows.each(shelf, 0, at, one -> {
                if (one.state() == PastCaseState.RELEASED) {
                    came(left, one);
                }
            });
            release = left;
            gone = false;
        }
    }

    /** Who cannot be read by the rules in force is nobody's company. */
    private void came(Release crowds, KeptPastCase one) {
        try {
            crowds.came(tunica.pastCases()
                    .readPastCase("past case " + one.id(), one.line().getBytes(StandardCharsets.UTF_8)));
        } catch (FaultyInput e) {
            return;
        }
    }

    private static String told(String line, String id) {
        int from = line.indexOf(PERSON_AND_TREATMENT);
        int to = line.indexOf(HOW_IT_WENT);
        return from < 0 || to < from ? line : line.substring(from, to).replace(id, "");
    }

    private static long number(String text) {
        return (long) text.hashCode() << Integer.SIZE | text.length();
    }
}
