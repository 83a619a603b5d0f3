package org.tunica;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tunica.rules.Rule;

/** The repository keeps its own promises: what stands where, and that no rule comes without its scenarios. */
class RepositoryTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final Pattern TAG = Pattern.compile("@([A-Z]{3}-\\d{3})");
    private static final Pattern HAZARD_TAG = Pattern.compile("@(HZ-\\d{2})");
    private static final Set<String> TOP_LEVEL =
            Set.of("pom.xml", "README.md", "DEVELOPERS.md", "rules", "src", "features", "knowledge", "target");

    @Test
    void theTopLevelIsTheTableOfContents() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("."))) {
            Set<String> found = files.map(file -> file.getFileName().toString())
                    .filter(name -> !name.startsWith("."))
                    .collect(Collectors.toCollection(TreeSet::new));
            found.removeAll(TOP_LEVEL);
            assertEquals(Set.of(), found);
        }
    }

    @Test
    void everyRuleHasScenariosOfEveryKindItCanHave() throws IOException {
        Map<String, Map<String, Set<String>>> kinds = scenarioKinds();
        List<String> missing = new ArrayList<>();
        TUNICA.review().unshown(Path.of("features")).forEach(remark -> missing.add(remark.toString()));
        for (Rule rule : TUNICA.rules().rules()) {
            Map<String, Set<String>> has = kinds.getOrDefault(rule.id(), Map.of());
            has.getOrDefault("hit", Set.of()).stream()
                    .filter(says -> !says.equals("speaks"))
                    .forEach(says -> missing.add(rule.id() + " has a hit that " + says));
            has.getOrDefault("miss", Set.of()).stream()
                    .filter(says -> !says.equals("stays quiet"))
                    .forEach(says -> missing.add(rule.id() + " has a miss that " + says));
            if (has.containsKey("unknown")
                    && !has.getOrDefault("unknown", Set.of()).contains("is in doubt")) {
                missing.add(rule.id() + " is never shown in doubt");
            }
        }
        assertEquals(List.of(), missing);
    }

    @Test
    void noScenarioSpeaksOfARuleThatIsNot() throws IOException {
        Set<String> ids = TUNICA.rules().rules().stream().map(Rule::id).collect(Collectors.toSet());
        Set<String> tagged = new HashSet<>(scenarioKinds().keySet());
        tagged.removeAll(ids);
        assertEquals(Set.of(), tagged);
    }

    /** What bars, warns or asks for a measurement does so because something could go wrong. */
    @Test
    void everyRuleThatHoldsBackNamesItsHazard() {
        List<String> without = TUNICA.rules().rules().stream()
                .filter(rule -> rule.hazards().isEmpty())
                .map(Rule::id)
                .filter(id -> id.matches("(EXC|NEE|ROM|CAU)-.*"))
                .toList();
        assertEquals(List.of(), without);
    }

    @Test
    void noScenarioProvesAHazardThatIsNot() throws IOException {
        Set<String> tagged = new TreeSet<>();
        for (Path file : files("features", ".feature")) {
            Matcher matcher = HAZARD_TAG.matcher(Files.readString(file));
            while (matcher.find()) {
                tagged.add(matcher.group(1));
            }
        }
        assertTrue(tagged.size() > 10, tagged::toString);
        tagged.removeAll(TUNICA.knowledge().hazards().keySet());
        assertEquals(Set.of(), tagged);
    }

    @Test
    void featuresMirrorRules() throws IOException {
        for (Path rules : files("rules", ".rule")) {
            Path feature =
                    Path.of(rules.toString().replaceFirst("^rules", "features").replace(".rule", ".feature"));
            assertTrue(Files.exists(feature), feature + " is missing");
        }
    }

    /** Per rule id: the kinds of rows in the tables of its outlines, and what the rule says there. */
    private static Map<String, Map<String, Set<String>>> scenarioKinds() throws IOException {
        Map<String, Map<String, Set<String>>> kinds = new TreeMap<>();
        for (Path file : files("features", ".feature")) {
            Set<String> tags = Set.of();
            List<String> head = List.of();
            for (String line : Files.readAllLines(file)) {
                String text = line.strip();
                if (text.startsWith("@")) {
                    tags = tags(text);
                } else if (text.startsWith("|") && text.contains("kind")) {
                    head = cells(text);
                } else if (text.startsWith("|") && !head.isEmpty()) {
                    row(tags, head, cells(text), kinds);
                } else if (!text.startsWith("|")) {
                    head = List.of();
                }
            }
        }
        return kinds;
    }

    private static void row(
            Set<String> tags, List<String> head, List<String> cells, Map<String, Map<String, Set<String>>> kinds) {
        String kind = cells.get(head.indexOf("kind"));
        String says = head.contains("says") ? cells.get(head.indexOf("says")) : "";
        tags.forEach(tag -> kinds.computeIfAbsent(tag, id -> new TreeMap<>())
                .computeIfAbsent(kind, name -> new TreeSet<>())
                .add(says));
    }

    private static Set<String> tags(String line) {
        Set<String> tags = new TreeSet<>();
        Matcher matcher = TAG.matcher(line);
        while (matcher.find()) {
            tags.add(matcher.group(1));
        }
        return tags;
    }

    private static List<String> cells(String line) {
        return Stream.of(line.substring(1, line.lastIndexOf('|')).split("\\|"))
                .map(String::strip)
                .toList();
    }

    private static List<Path> files(String folder, String ending) throws IOException {
        try (Stream<Path> walk = Files.walk(Path.of(folder))) {
            return walk.filter(path -> path.toString().endsWith(ending))
                    .sorted()
                    .toList();
        }
    }
}
