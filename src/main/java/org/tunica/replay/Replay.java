package org.tunica.replay;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.pastcases.CaseProgress;
import org.tunica.physics.HeatQuestion;

/**
 * Runs two releases over many cases on several threads. Batches are added up in their order, so the result does not depend
 * on the threads; only a few wait at a time, so the memory does not grow with the cases. Where other programs work at the same
 * replay, each first does what nobody is at, from the first batch to the last, and then adds up what all of them did.
 */
public final class Replay {
    private static final int WAITING_PER_THREAD = 3;
    private static final int MOST_FAULTS = 200;
    private static final int LOOKS_EVERY_MS = 200;

    private final TwoReleases releases;
    private final List<ReplayedCases> cases;
    private final BatchStore store;
    private final int threads;
    private final Function<Object, String> toLine;

    private Replay(
            TwoReleases releases,
            List<ReplayedCases> cases,
            BatchStore store,
            int threads,
            Function<Object, String> toLine) {
        this.releases = releases;
        this.cases = cases;
        this.store = store;
        this.threads = threads;
        this.toLine = toLine;
    }

    /**
     * A replay of the demonstration cases and those asked for.
     *
     * @param toLine a record as JSON on one line
     */
    public static Replay of(
            ReleaseSide before, ReleaseSide after, ReplayRequest request, Function<Object, String> toLine) {
        List<ReplayedCases> cases = request.cases(before, toLine);
        String name = Digest.of(
                before.name().digest(),
                after.name().digest(),
                String.join("; ", cases.stream().map(ReplayedCases::says).toList()));
        return new Replay(
                new TwoReleases(before, after), cases, request.batches(name, toLine), request.threads(), toLine);
    }

    /**
     * How much the heat model will be asked that it has not answered yet, told from the first cases.
     *
     * @throws FaultyInput when one of them cannot be read
     */
    public HeatAhead heatAhead() {
        return new HeatSurvey(releases).of(cases);
    }

    /** Lets the heat model answer, and keeps the answers: to learn how long it takes, or to have them at hand. */
    public void seek(List<HeatQuestion> questions) {
        questions.forEach(releases.before().physics()::heatOutlook);
    }

    /**
     * Replays all cases.
     *
     * @throws FaultyInput with the faults of each case the release before cannot read; then there is no result
     */
    public ReplayResult run(CaseProgress progress) {
        Run run = new Run(progress);
        try {
            if (store.shared()) {
                ReplayedCases.each(cases, run::help);
                run.finish();
            }
            ReplayedCases.each(cases, run::take);
            run.finish();
        } catch (FaultyInput e) {
            run.faults.addAll(e.faults());
        } finally {
            run.workers.shutdownNow();
        }
        run.throwIfFaulty();
        ReplayResult result = run.sum.result(
                releases.before().name(),
                releases.after().name(),
                cases.stream().map(ReplayedCases::says).toList(),
                cases.stream().anyMatch(ReplayedCases::invented));
        return result.sealedWith(Digest.of(toLine.apply(result)));
    }

    /** Batches on their way. */
    private final class Run {
        private final BatchWork work = new BatchWork(releases);
        private final ExecutorService workers = Executors.newFixedThreadPool(threads, Run::daemon);
        private final Deque<Waiting> waiting = new ArrayDeque<>();
        private final Summing sum = new Summing();
        private final List<Fault> faults = new ArrayList<>();
        private final CaseProgress progress;
        private long casesDone;

        Run(CaseProgress progress) {
            this.progress = progress;
        }

        private record Waiting(Batch batch, Future<Optional<BatchWork.Outcome>> outcome) {}

        private static Thread daemon(Runnable task) {
            Thread thread = new Thread(task, "replay");
            thread.setDaemon(true);
            return thread;
        }

        void take(Batch batch) {
            await(new Waiting(batch, workers.submit(() -> Optional.of(outcome(batch)))));
        }

        /** Does a batch nobody is at; what came of it is added up later. */
        void help(Batch batch) {
            await(new Waiting(batch, workers.submit(() -> {
                if (store.take(batch.number(), batch.digest())) {
                    done(batch);
                }
                return Optional.empty();
            })));
        }

        private void await(Waiting one) {
            waiting.add(one);
            if (waiting.size() >= WAITING_PER_THREAD * threads) {
                next();
            }
        }

        /** What became of a batch, by whichever program. */
        private BatchWork.Outcome outcome(Batch batch) throws InterruptedException {
            while (true) {
                Optional<BatchResult> known = store.find(batch.number(), batch.digest());
                if (known.isPresent()) {
                    return new BatchWork.Outcome(known.get(), List.of());
                }
                if (store.take(batch.number(), batch.digest())) {
                    return done(batch);
                }
                TimeUnit.MILLISECONDS.sleep(LOOKS_EVERY_MS);
            }
        }

        private BatchWork.Outcome done(Batch batch) {
            BatchWork.Outcome outcome = work.of(batch);
            if (outcome.faults().isEmpty()) {
                store.keep(outcome.result());
            }
            return outcome;
        }

        void finish() {
            while (!waiting.isEmpty()) {
                next();
            }
            casesDone = 0;
        }

        private void next() {
            Waiting first = waiting.remove();
            awaited(first.outcome()).ifPresent(outcome -> {
                sum.add(outcome.result());
                faults.addAll(outcome.faults());
            });
            casesDone += first.batch().cases().size();
            progress.at(first.batch().done(), first.batch().all(), casesDone);
            if (faults.size() >= MOST_FAULTS) {
                throwIfFaulty();
            }
        }

        private static Optional<BatchWork.Outcome> awaited(Future<Optional<BatchWork.Outcome>> outcome) {
            try {
                return outcome.get();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException("the replay was interrupted", e);
            } catch (ExecutionException e) {
                if (e.getCause() instanceof RuntimeException known) {
                    throw known;
                }
                throw new IllegalStateException(e.getCause());
            }
        }

        void throwIfFaulty() {
            if (!faults.isEmpty()) {
                throw new FaultyInput(
                        "cases", faults.stream().distinct().limit(MOST_FAULTS).toList());
            }
        }
    }
}
