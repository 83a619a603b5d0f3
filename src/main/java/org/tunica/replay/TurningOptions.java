package org.tunica.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.tunica.plan.OptionJudgement;
import org.tunica.plan.Rated;
import org.tunica.plan.SegmentJudgement;
import org.tunica.rules.Considered;
import org.tunica.rules.OptionFacts;
import org.tunica.rules.RuleShift;
import org.tunica.rules.Verdict;

/**
 * Judges a segment of which both releases compute the same numbers. An option no rule can turn for stands the same under
 * both; of it only the place in the ranking is needed, and not even that where something keeps it out of the ranking.
 */
record TurningOptions(ReleaseSide before, ReleaseSide after, Sameness same, RuleShift shift, Comparer comparer) {

    Optional<ChangedSegment> compare(List<Considered> options, List<OptionFacts> facts) {
        Ranked ranked = new Ranked();
        for (int i = 0; i < options.size(); i++) {
            if (shift.mayTurn(facts.get(i))) {
                ranked.turning(before.judge(options.get(i), facts.get(i)), after.judge(options.get(i), facts.get(i)));
            } else {
                standing(options.get(i), facts.get(i), ranked);
            }
        }
        Optional<String> firstBefore = Rated.first(ranked.before);
        Optional<String> firstAfter = Rated.first(ranked.after);
        if (!firstBefore.equals(firstAfter)) {
            withThose(options, facts, firstBefore, firstAfter, ranked);
        }
        String ref = options.get(0).segment().ref();
        return comparer.compare(
                new SegmentJudgement(ref, firstBefore, List.copyOf(ranked.judgedBefore.values())),
                new SegmentJudgement(ref, firstAfter, List.copyOf(ranked.judgedAfter.values())));
    }

    private void standing(Considered option, OptionFacts facts, Ranked ranked) {
        Optional<List<Verdict>> verdicts = before.rules().judgeUnlessBarred(facts);
        if (verdicts.isPresent()) {
            Rated rated = before.planner().rate(option, verdicts.get());
            ranked.before.add(rated);
            ranked.after.add(same.ranking() ? rated : after.planner().rate(option, verdicts.get()));
        }
    }

    /** How those stood that led or lead tells how grave it is. */
    private void withThose(
            List<Considered> options,
            List<OptionFacts> facts,
            Optional<String> firstBefore,
            Optional<String> firstAfter,
            Ranked ranked) {
        Set<String> wanted = new TreeSet<>();
        firstBefore.ifPresent(wanted::add);
        firstAfter.ifPresent(wanted::add);
        wanted.removeAll(ranked.judgedBefore.keySet());
        for (int i = 0; i < options.size(); i++) {
            if (wanted.contains(options.get(i).technique().id())) {
                ReleaseSide.Judged judged = before.judge(options.get(i), facts.get(i));
                ranked.judged(judged.judgement(), judged.judgement());
            }
        }
    }

    /** What is gathered option by option. */
    private static final class Ranked {
        private final List<Rated> before = new ArrayList<>();
        private final List<Rated> after = new ArrayList<>();
        private final Map<String, OptionJudgement> judgedBefore = new TreeMap<>();
        private final Map<String, OptionJudgement> judgedAfter = new TreeMap<>();

        void turning(ReleaseSide.Judged was, ReleaseSide.Judged is) {
            before.add(was.rated());
            after.add(is.rated());
            judged(was.judgement(), is.judgement());
        }

        void judged(OptionJudgement was, OptionJudgement is) {
            judgedBefore.put(was.technique(), was);
            judgedAfter.put(is.technique(), is);
        }
    }
}
