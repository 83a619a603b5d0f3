package org.tunica.mutation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tunica.CaseTree;
import org.tunica.Tunica;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.Reason;
import org.tunica.rules.Rule;

/**
 * Gets every rule and every limit wrong, one thing at a time: some scenario must fail. A small slice runs always, all
 * of it with {@code mvn -Pdeep test -Dtest=MutationTest}, which writes {@code target/mutation.md}.
 */
class MutationTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final String SLICE = "rules/3-cautions/arteries.rule";

    @Test
    void rulesPrintedAndReadAgain_areTheSame() {
        List<Rule> again =
                PrintedRules.book(TUNICA.rules().rules(), TUNICA.knowledge()).rules();
        assertEquals(said(TUNICA.rules().rules()), said(again));
    }

    private static List<List<Object>> said(List<Rule> rules) {
        return rules.stream()
                .map(rule -> List.<Object>of(rule.id(), rule.conditions(), rule.conclusion(), rule.because()))
                .toList();
    }

    @Test
    void everyMutantOfASliceIsNoticed() {
        String feature = SLICE.replaceFirst("^rules", "features").replace(".rule", ".feature");
        Replay replay = new Replay(Recording.of(feature), TUNICA.physics());
        List<Rule> rules = TUNICA.rules().rules().stream()
                .filter(rule -> rule.place().startsWith(SLICE))
                .toList();
        MutationReport report = report(replay, rules);
        assertTrue(report.outcomes().size() > 20, report.summary());
        assertEquals(List.of(), report.unexcused());
    }

    @Test
    @Tag("deep")
    void everyMutantIsNoticed() {
        Replay replay = new Replay(Recording.of("features"), TUNICA.physics());
        MutationReport report = report(replay, TUNICA.rules().rules());
        report.write(Path.of("target/mutation.md"), withoutDemoCase());
        assertEquals(List.of(), report.unexcused(), report.summary());
        assertEquals(List.of(), report.idleExcuses(), report.summary());
    }

    private static MutationReport report(Replay replay, List<Rule> rules) {
        List<Replay.Outcome> outcomes =
                new Mutants(TUNICA.knowledge(), rules).all().map(replay::of).toList();
        return new MutationReport(outcomes, EquivalentMutants.reasons());
    }

    private static Set<String> withoutDemoCase() {
        Set<String> ids = new TreeSet<>();
        TUNICA.rules().rules().forEach(rule -> ids.add(rule.id()));
        for (Path file : CaseTree.demoFiles()) {
            CaseTree tree = CaseTree.demo(file.getFileName().toString().replace(".json", ""));
            TUNICA.advise(TUNICA.readCase("demo", tree.bytes())).segments().stream()
                    .flatMap(segment -> segment.options().stream())
                    .forEach(option -> ids.removeAll(spoken(option)));
        }
        return ids;
    }

    private static List<String> spoken(OptionAdvice option) {
        return Stream.of(option.reasons(), option.cautions(), option.needs())
                .flatMap(List::stream)
                .filter(reason -> reason.inDoubt().isEmpty())
                .map(Reason::rule)
                .toList();
    }
}
