package org.tunica.replay;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.physics.HeatQuestion;

/** Looks at the first cases of each source, which of their segments will be judged, and what that asks of the heat model. */
final class HeatSurvey {
    private static final int SOME = 8;

    private final TwoReleases releases;
    private final Set<HeatQuestion> missingBefore = new HashSet<>();
    private final Set<HeatQuestion> missingAfter = new HashSet<>();
    private long looked;
    private long all;

    HeatSurvey(TwoReleases releases) {
        this.releases = releases;
    }

    HeatAhead of(List<ReplayedCases> cases) {
        cases.forEach(source -> first(source, this::look));
        boolean shared = releases.sharesHeat();
        List<HeatQuestion> some = new ArrayList<>(missingBefore);
        return new HeatAhead(
                looked,
                all,
                missingBefore.size() + (shared ? 0 : missingAfter.size()),
                shared,
                some.subList(0, Math.min(SOME, some.size())));
    }

    /** Ends the reading of a source after one batch. */
    private static final class Enough extends RuntimeException {
        Enough() {
            super("enough", null, false, false);
        }
    }

    private static void first(ReplayedCases source, Consumer<Batch> taker) {
        try {
            source.each(0, batch -> {
                taker.accept(batch);
                throw new Enough();
            });
        } catch (Enough e) {
            // one batch tells enough
        }
    }

    private void look(Batch batch) {
        int count = batch.cases().size();
        looked += count;
        all += Math.round((double) count * batch.all() / Math.max(1, batch.done()));
        batch.cases().forEach(one -> look(one.read(releases.before())));
    }

    private void look(CaseFile caseFile) {
        for (Limb limb : caseFile.limbs()) {
            for (Segment segment : limb.segments()) {
                if (releases.asksHeat(caseFile, limb, segment)) {
                    missing(releases.before(), caseFile, segment, missingBefore);
                    missing(releases.after(), caseFile, segment, missingAfter);
                }
            }
        }
    }

    private static void missing(ReleaseSide side, CaseFile caseFile, Segment segment, Set<HeatQuestion> missing) {
        side.physics().heatQuestions(caseFile, segment).stream()
                .filter(question -> side.memory().recall(question).isEmpty())
                .forEach(missing::add);
    }
}
