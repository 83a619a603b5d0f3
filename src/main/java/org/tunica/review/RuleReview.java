package org.tunica.review;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;
import org.tunica.rules.RuleBook;

/** Everything a reviewer can ask of the rules of one release. Immutable. */
public final class RuleReview {
    private final Bundle bundle;
    private final Knowledge knowledge;
    private final RuleBook rules;

    private RuleReview(Bundle bundle, Knowledge knowledge, RuleBook rules) {
        this.bundle = bundle;
        this.knowledge = knowledge;
        this.rules = rules;
    }

    /** A review of rules that have been read already, with the bundle and knowledge they were read from. */
    public static RuleReview of(Bundle bundle, Knowledge knowledge, RuleBook rules) {
        return new RuleReview(bundle, knowledge, rules);
    }

    /**
     * A review of the rules of a bundle.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault of its files
     */
    public static RuleReview of(Bundle bundle) {
        Knowledge knowledge = Knowledge.of(bundle);
        return of(bundle, knowledge, RuleBook.of(bundle, knowledge));
    }

    /** What is to be said of the rules by themselves and against each other, faults first. */
    public List<Remark> remarks() {
        Reasoning reasoning = reasoning();
        List<Remark> remarks = new ArrayList<>(
                new LoneRuleChecks(reasoning, !knowledge.hazards().isEmpty()).remarks());
        remarks.addAll(new PairChecks(reasoning).remarks());
        remarks.addAll(new RangeChecks(reasoning).remarks());
        return new Acceptances(knowledge.accepted().values())
                .appliedTo(remarks).stream().sorted().toList();
    }

    /**
     * Which rules the scenarios of a folder leave unshown.
     *
     * @param features the folder of the scenarios
     */
    public List<Remark> unshown(Path features) throws IOException {
        return new ScenarioChecks(rules.rules(), Scenario.in(features))
                .remarks().stream().sorted().toList();
    }

    /** Made-up facts at every boundary of every rule, with what the rule must say there. */
    public List<Probe> probes() {
        return new Prober(reasoning()).probes();
    }

    /** The boundaries for which no facts exist, with why. */
    public List<Probe.Unprobed> unprobed() {
        return new Prober(reasoning()).unprobed();
    }

    /** Every probe with what the engine said of it. */
    public List<Probe.Outcome> probed() {
        return new Prober(reasoning()).outcomes(rules);
    }

    /** What changed from an older release to this one: rules, then numbers, then the rest, each by id. */
    public List<Difference> since(RuleReview older) {
        return Differences.between(older.knowledge, older.rules.rules(), knowledge, rules.rules());
    }

    /**
     * The rule book as Markdown.
     *
     * @param day the day on which reviews are judged overdue
     */
    public String ruleBook(LocalDate day) {
        return new RuleBookPage(bundle, knowledge, rules.rules(), day).of(remarks());
    }

    /** The page for authors of rules as Markdown. */
    public String grammar() {
        return new GrammarPage(knowledge, rules.rules()).of(Mistakes.in(bundle, knowledge, rules.rules()));
    }

    /**
     * The hazard log as Markdown: what the program is for, and for each hazard its controls and their tests.
     *
     * @param features the folder of the scenarios, if it is at hand
     */
    public String hazardLog(Optional<Path> features) throws IOException {
        return new HazardLogPage(knowledge, rules.rules())
                .of(features.isPresent() ? Scenario.in(features.get()) : List.of());
    }

    /**
     * Writes the pages, each as Markdown and as one HTML file that needs nothing else.
     *
     * @param folder where they go; made if it is not there
     * @param features the folder of the scenarios, if it is at hand
     * @param day the day on which reviews are judged overdue
     */
    public void writeBook(Path folder, Optional<Path> features, LocalDate day) throws IOException {
        Files.createDirectories(folder);
        for (Map.Entry<String, String> page : pages(features, day).entrySet()) {
            Files.writeString(folder.resolve(page.getKey()), page.getValue());
        }
    }

    /**
     * The same pages by the names of their files.
     *
     * @param features the folder of the scenarios, if it is at hand
     * @param day the day on which reviews are judged overdue
     */
    public SortedMap<String, String> pages(Optional<Path> features, LocalDate day) throws IOException {
        SortedMap<String, String> pages = new TreeMap<>();
        page(pages, "rule-book", RuleBookPage.TITLE, ruleBook(day));
        page(pages, "grammar", GrammarPage.TITLE, grammar());
        page(pages, "hazard-log", HazardLogPage.TITLE, hazardLog(features));
        return pages;
    }

    private static void page(SortedMap<String, String> pages, String name, String title, String markdown) {
        pages.put(name + ".md", markdown);
        pages.put(name + ".html", HtmlPage.of(title, markdown));
    }

    private Reasoning reasoning() {
        return new Reasoning(knowledge, rules.rules());
    }
}
