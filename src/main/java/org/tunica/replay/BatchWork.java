package org.tunica.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/** Replays one batch. Safe for several threads. */
final class BatchWork {
    /** One case in so many is judged again by the rule engine. */
    private static final int CHECK_EVERY = 200;

    private final TwoReleases releases;
    private final EngineCheck check;

    BatchWork(TwoReleases releases) {
        this.releases = releases;
        this.check = new EngineCheck(releases);
    }

    /** What became of a batch, or every fault of its cases. */
    record Outcome(BatchResult result, List<Fault> faults) {}

    Outcome of(Batch batch) {
        List<ReplayedSegment> changed = new ArrayList<>();
        List<Unreadable> unreadable = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        int casesCount = 0;
        int segmentsCount = 0;
        int checkedCount = 0;
        for (int i = 0; i < batch.cases().size(); i++) {
            Optional<CaseFile> read = read(batch.cases().get(i), unreadable, faults);
            if (read.isPresent()) {
                casesCount++;
                segmentsCount += segments(read.get());
                changed.addAll(releases.changed(read.get()));
                if (i % CHECK_EVERY == 0) {
                    check.check(read.get());
                    checkedCount++;
                }
            }
        }
        return new Outcome(
                new BatchResult(
                        batch.number(), batch.digest(), casesCount, segmentsCount, checkedCount, changed, unreadable),
                faults);
    }

    private static int segments(CaseFile caseFile) {
        return caseFile.limbs().stream()
                .mapToInt(limb -> limb.segments().size())
                .sum();
    }

    /** A case the release before refuses is a fault of the base; one the later refuses is a finding. */
    private Optional<CaseFile> read(CaseToReplay one, List<Unreadable> unreadable, List<Fault> faults) {
        CaseFile read;
        try {
            read = one.read(releases.before());
        } catch (FaultyInput e) {
            faults.addAll(e.faults());
            return Optional.empty();
        }
        try {
            if (!releases.readAlike()) {
                one.read(releases.after());
            }
            return Optional.of(read);
        } catch (FaultyInput e) {
            unreadable.add(new Unreadable(
                    read.caseRef(), e.faults().stream().map(Fault::toString).toList()));
            return Optional.empty();
        }
    }
}
