package org.tunica.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.tunica.rules.Conclusion;
import org.tunica.rules.Considered;
import org.tunica.rules.NearMiss;
import org.tunica.rules.OptionKey;
import org.tunica.rules.Verdict;

/** Keeps the near misses that would change how a technique stands, alike ones together, the gravest and nearest first. */
final class NearMissWriter {
    private static final Comparator<NearMissAdvice> ORDER = Comparator.comparing(NearMissWriter::graveness)
            .thenComparing(NearMissAdvice::awayShare)
            .thenComparing(NearMissAdvice::rule)
            .thenComparing(NearMissAdvice::wouldNeed)
            .thenComparing(NearMissAdvice::from)
            .thenComparing(NearMissAdvice::to);

    private NearMissWriter() {}

    static List<NearMissAdvice> write(List<NearMiss> misses, Map<OptionKey, Judged> judged) {
        Map<NearMissAdvice, TreeSet<String>> alike = new LinkedHashMap<>();
        for (NearMiss miss : misses) {
            if (!decides(miss.rule().conclusion().kind())) {
                continue;
            }
            Judged now = judged.get(miss.option());
            OptionStanding to = new Judged(now.option(), miss.verdicts()).standing();
            if (to != now.standing() && turnsTheStanding(miss, now.option(), to)) {
                alike.computeIfAbsent(advice(miss, now.standing(), to, List.of()), key -> new TreeSet<>())
                        .add(miss.option().techniqueId());
            }
        }
        List<NearMissAdvice> written = new ArrayList<>();
        alike.forEach((advice, techniques) -> written.add(advice.with(List.copyOf(techniques))));
        return written.stream().sorted(ORDER).toList();
    }

    /** A finding turns a standing only through the rule that asks for it, and that one is told; a setting never does. */
    private static boolean decides(Conclusion.Kind kind) {
        return kind != Conclusion.Kind.FIND && kind != Conclusion.Kind.SET;
    }

    /** Several rules may turn at one limit; told is the one without which the standing would stay. */
    private static boolean turnsTheStanding(NearMiss miss, Considered option, OptionStanding to) {
        List<Verdict> without = miss.verdicts().stream()
                .filter(verdict -> !verdict.rule().equals(miss.rule()))
                .toList();
        return miss.speaks() || new Judged(option, without).standing() != to;
    }

    private static NearMissAdvice advice(NearMiss miss, OptionStanding from, OptionStanding to, List<String> of) {
        return new NearMissAdvice(
                miss.rule().id(),
                miss.rule().title(),
                of,
                miss.wouldNeed(),
                from,
                to,
                miss.limit().id(),
                Rounded.of(miss.share()));
    }

    /** What turns on being excluded comes first, then what turns on being careful, then first choices. */
    private static int graveness(NearMissAdvice advice) {
        return -Math.max(advice.from().ordinal(), advice.to().ordinal());
    }
}
