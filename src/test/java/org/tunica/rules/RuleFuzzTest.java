package org.tunica.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;
import net.jqwik.api.lifecycle.AfterContainer;
import org.tunica.HeapWatch;
import org.tunica.Mangled;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;

/** Whatever is done to a rule file, it is refused with places, or read as rules that say what they were read as. */
class RuleFuzzTest {
    private static final String PATH = "rules/2-exclusions/mangled.rule";
    private static final List<String> SHIPPED =
            List.copyOf(Texts.SHIPPED.under("rules/", ".rule").values());
    private static final long LONGEST_NANOS = 2_000_000_000L;
    private static final HeapWatch HEAP = new HeapWatch();
    private static int accepted;
    private static int refused;

    @Property(tries = 1_500, seed = "20260101", shrinking = ShrinkingMode.OFF)
    void mangled(@ForAll long seed) {
        mangledRule(seed);
    }

    @Property(tries = 400, seed = "20260102", shrinking = ShrinkingMode.OFF)
    void madeOfPieces(@ForAll long seed) {
        isRefusedOrSaysWhatItIs(Mangled.ofNothing(SHIPPED, new Random(seed)));
    }

    @Property(tries = 150_000, seed = "20260111", shrinking = ShrinkingMode.OFF)
    @Tag("deep")
    void mangledDeep(@ForAll long seed) {
        mangledRule(seed);
    }

    @Property(tries = 30_000, seed = "20260112", shrinking = ShrinkingMode.OFF)
    @Tag("deep")
    void madeOfPiecesDeep(@ForAll long seed) {
        isRefusedOrSaysWhatItIs(Mangled.ofNothing(SHIPPED, new Random(seed)));
    }

    /** A fuzz that only ever reads, or only ever refuses, would show nothing. */
    @AfterContainer
    static void bothOutcomesWereSeen_andNothingWasKept() {
        HEAP.nothingWasKept();
        assertTrue(accepted > 50, "accepted " + accepted);
        assertTrue(refused > 50, "refused " + refused);
    }

    private static void mangledRule(long seed) {
        Random random = new Random(seed);
        String text = SHIPPED.get(random.nextInt(SHIPPED.size()));
        isRefusedOrSaysWhatItIs(Mangled.of(text, SHIPPED, random));
    }

    private static void isRefusedOrSaysWhatItIs(String text) {
        long start = cpuNanos();
        Faults faults = new Faults();
        List<Rule> rules = List.of();
        try {
            rules = new RuleParser(Texts.KNOWLEDGE, faults).parse(new TreeMap<>(Map.of(PATH, text)));
            new RuleChecks(Texts.SHIPPED, Texts.KNOWLEDGE, new Faults()).check(rules);
        } catch (FaultyInput e) {
            assertTrue(e.faults().size() > Faults.MOST, "ended before the bound");
        }
        assertTrue(cpuNanos() - start < LONGEST_NANOS, text);
        if (faults.none()) {
            accepted++;
            rules.forEach(RuleFuzzTest::isReadBackAsItself);
            runsNowAndThen(rules);
        } else {
            refused++;
            faults.list().forEach(RuleFuzzTest::hasAPlace);
        }
    }

    private static void hasAPlace(Fault fault) {
        assertTrue(fault.place().matches("rules/2-exclusions/mangled\\.rule(:\\d+)?"), fault::toString);
        assertFalse(fault.says().isBlank(), fault::toString);
    }

    private static void isReadBackAsItself(Rule rule) {
        Faults faults = new Faults();
        List<Rule> again = new RuleParser(Texts.KNOWLEDGE, faults)
                .parse(new TreeMap<>(Map.of(PATH, "# Is it the same?\n" + rule.text())));
        assertEquals(List.of(), faults.list(), rule::text);
        assertEquals(
                List.of(elsewhere(rule)),
                again.stream().map(RuleFuzzTest::elsewhere).toList(),
                rule::text);
    }

    /** The same rule at no place: where it stands is no part of what it says. */
    private static Rule elsewhere(Rule rule) {
        return new Rule(
                rule.id(),
                rule.title(),
                rule.sources(),
                rule.standing(),
                rule.change(),
                rule.reviewBy(),
                rule.ruleClass(),
                rule.hazards(),
                rule.conditions(),
                rule.conclusion(),
                rule.because(),
                "");
    }

    private static void runsNowAndThen(List<Rule> rules) {
        if (accepted % 200 == 0 && rules.stream().map(Rule::id).distinct().count() == rules.size()) {
            new DroolsEngine(rules)
                    .judge(List.of(OptionFacts.ofNothing(
                            Texts.KNOWLEDGE.glossary().fields().size())));
        }
    }

    private static long cpuNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
