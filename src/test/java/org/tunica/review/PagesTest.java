package org.tunica.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Hazard;
import org.tunica.knowledge.Knowledge;
import org.tunica.rules.Rule;
import org.tunica.rules.RuleBook;

/** The printed pages hold everything they promise and nothing that could run, reach out or break the page. */
class PagesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 1, 1);
    private static final Bundle SHIPPED = Bundle.shipped();
    private static final Knowledge KNOWLEDGE = Knowledge.of(SHIPPED);
    private static final RuleBook RULES = RuleBook.of(SHIPPED, KNOWLEDGE);
    private static final RuleReview REVIEW = RuleReview.of(SHIPPED, KNOWLEDGE, RULES);
    private static final List<String> NAMES = List.of("rule-book", "grammar", "hazard-log");
    private static final Pattern ID = Pattern.compile("<h\\d id=\"([^\"]*)\"");
    private static final Pattern LINK = Pattern.compile("href=\"([^\"]*)\"");

    @TempDir
    private static Path folder;

    @BeforeAll
    static void write() throws IOException {
        REVIEW.writeBook(folder, Optional.of(Path.of("features")), DAY);
    }

    @ParameterizedTest
    @ValueSource(strings = {"rule-book", "grammar", "hazard-log"})
    void aPageNeedsNothingElseAndItsLinksLeadSomewhere(String name) throws IOException {
        String html = Files.readString(folder.resolve(name + ".html"));
        assertFalse(Pattern.compile("<script|<link|<img|<iframe|src=|@import|url\\(")
                .matcher(html)
                .find());
        List<String> ids = all(ID, html);
        assertEquals(Set.copyOf(ids).size(), ids.size());
        assertTrue(ids.size() > 5);
        all(LINK, html).forEach(link -> assertTrue(link.startsWith("#") && ids.contains(link.substring(1)), link));
    }

    @Test
    void theSameReleaseGivesTheSameBytes(@TempDir Path again) throws IOException {
        RuleReview.of(SHIPPED).writeBook(again, Optional.of(Path.of("features")), DAY);
        for (String name : NAMES) {
            for (String ending : List.of(".md", ".html")) {
                assertEquals(-1, Files.mismatch(folder.resolve(name + ending), again.resolve(name + ending)));
            }
        }
    }

    @Test
    void theRuleBookHoldsEveryRuleAndEveryNumber() {
        String book = REVIEW.ruleBook(DAY);
        for (Rule rule : RULES.rules()) {
            assertTrue(
                    book.contains("\n#### " + Ink.text(RulePrint.heading(rule)).line() + "\n"), rule.id());
        }
        KNOWLEDGE
                .quantities()
                .keySet()
                .forEach(id -> assertTrue(book.contains("\n| " + Ink.text(id).cell() + " | "), id));
        KNOWLEDGE.sources().keySet().forEach(id -> assertTrue(book.contains("\n| " + id + " | "), id));
        KNOWLEDGE.evidence().keySet().forEach(id -> assertTrue(book.contains("\n| " + id + " | "), id));
        KNOWLEDGE.conflicts().keySet().forEach(id -> assertTrue(book.contains("\n| " + id + " | "), id));
        assertTrue(book.contains(SHIPPED.digest()));
    }

    @Test
    void aRuleStandsInPrintWithItsNumbersAndWhatItRestsOn() {
        String book = Plant.review(
                        "EXC-901 | exclude | the technique works by heat | the depth to the skin is less than limit plant.four")
                .ruleBook(DAY);
        assertTrue(book.contains("""
                #### EXC-901 a planted rule

                **When** the technique works by heat **and** the depth to the skin is less than 4 mm **then** exclude, \
                **because** it was planted.

                - **4 mm**: a planted limit; unverified, S-0900; limit plant.four
                - **Standing:** unverified; class contraindication; review by 2027-11
                - **Source:** S-0900, common practice, no published source (read: none)
                - **Change:** 0900, a test (draft; approved by nobody)
                """), book);
        assertTrue(book.contains("1 of 1 rules and "), book);
    }

    @Test
    void reviewsAreJudgedByTheDayHandedIn() {
        RuleReview review = Plant.review("EXC-901 | exclude | the patient is pregnant");
        assertTrue(review.ruleBook(LocalDate.of(2027, 11, 30)).contains("No review is overdue on 2027-11-30."));
        assertTrue(review.ruleBook(LocalDate.of(2027, 12, 1)).contains("| a planted rule | 2027-11 |"));
    }

    @Test
    void whatATextHoldsStaysText() {
        String hostile = "a <script>alert(x)</script> | [x](javascript:alert(x)) `<b>` **bold** <!-- & rule";
        Map<String, String> texts = new TreeMap<>(
                Plant.bundle("EXC-901 | exclude | the patient is pregnant").texts());
        texts.computeIfPresent(
                "rules/2-exclusions/plant.rule", (path, text) -> text.replace("a planted rule", hostile));
        texts.computeIfPresent(
                "knowledge/limits/plant.yaml", (path, text) -> text.replace("a planted limit", "'" + hostile + "'"));
        String html = HtmlPage.of("<b>", RuleReview.of(Bundle.of(texts)).ruleBook(DAY));
        String shown = hostile.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
        assertTrue(html.contains(">EXC-901 " + shown + "</h4>"), html);
        assertTrue(html.contains("<td>" + shown + "</td>"), html);
        assertFalse(html.contains("<script") || html.contains("href=\"javascript") || html.contains("<b>"));
    }

    @Test
    void theGrammarHasEveryFieldAndEveryMistakeGetsAMessage() {
        String grammar = REVIEW.grammar();
        KNOWLEDGE
                .glossary()
                .fields()
                .values()
                .forEach(field -> assertTrue(grammar.contains("| " + field.noun() + " | "), field.id()));
        RuleBook.conclusionForms(KNOWLEDGE).forEach(form -> assertTrue(grammar.contains("| `" + form + "` | "), form));
        Mistakes mistakes = Mistakes.in(SHIPPED, KNOWLEDGE, RULES.rules()).orElseThrow();
        Map<String, String> made = mistakes.made();
        assertTrue(made.size() > 15);
        made.forEach((mistake, text) -> assertFalse(mistakes.faults(text).isEmpty(), mistake));
    }

    @Test
    void aReleaseWithoutARuleToShowStillHasItsGrammar() {
        assertFalse(Plant.review("EXC-901 | exclude | the patient is pregnant")
                .grammar()
                .contains("Common mistakes"));
    }

    @Test
    void theHazardLogShowsForEachHazardItsControlsAndTheirScenarios() throws IOException {
        List<Scenario> scenarios = Scenario.in(Path.of("features"));
        String log = REVIEW.hazardLog(Optional.of(Path.of("features")));
        for (Hazard hazard : KNOWLEDGE.hazards().values()) {
            assertTrue(log.contains("### " + hazard.id() + " " + hazard.hazard()), hazard.id());
        }
        assertTrue(log.contains("What it is not for"));
        for (Rule rule : RULES.rules()) {
            Scenario shown = scenarios.stream()
                    .filter(scenario -> scenario.tags().contains(rule.id()))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError(rule.id() + " has no scenario"));
            if (!rule.hazards().isEmpty()) {
                assertTrue(log.contains("| " + rule.id() + " | ") && log.contains(shown.place()), rule.id());
            }
        }
        assertTrue(REVIEW.hazardLog(Optional.empty()).contains("Hazard log"));
    }

    @Test
    void scenariosAreReadWithTheTagsAndExamplesTheyHave(@TempDir Path features) throws IOException {
        Files.writeString(features.resolve("some.feature"), """
                @HZ-01
                Feature: a feature

                  @EXC-901
                  Rule: EXC-901 a planted rule

                    @CAU-901 @CAU-902
                    Scenario Outline: <kind>: an outline
                      Given a sound leg
                        | a | table |

                      Examples:
                        | kind | a |
                        | hit  | 1 |
                        | miss | 2 |
                        | hit  | 3 |

                    Scenario: a single one
                      Given a sound leg
                """);
        List<Scenario> read = Scenario.in(features);
        assertEquals(
                List.of("some.feature:8: 3 examples (hit, miss)", "some.feature:18: a single one"),
                read.stream().map(Scenario::title).toList());
        assertEquals(
                Set.of("HZ-01", "EXC-901", "CAU-901", "CAU-902"), read.get(0).tags());
        assertEquals(Set.of("HZ-01", "EXC-901"), read.get(1).tags());
    }

    private static List<String> all(Pattern pattern, String text) {
        List<String> found = new ArrayList<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }
}
