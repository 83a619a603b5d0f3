package org.tunica.knowledge;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;

/** Which change record and source each rule and each listed number names, read from the texts alone. */
final class Origins {
    private static final Pattern RULE = Pattern.compile("(?m)^rule ([A-Z]{3}-\\d{3})\\b");
    private static final Pattern CHANGE = Pattern.compile("\\bchange (\\d{4})\\b");
    private static final Pattern WHEN = Pattern.compile("(?m)^\\s*when\\b");
    private static final Pattern SOURCE = Pattern.compile("S-\\d{4}");

    /** A change and the sources beside it. */
    private record Origin(String change, List<String> sources) {}

    private final SortedMap<String, Origin> rules = new TreeMap<>();
    private final SortedMap<String, Origin> limits = new TreeMap<>();

    private Origins() {}

    static Origins in(Bundle bundle) {
        Origins origins = new Origins();
        bundle.under(BundleTexts.RULES, ".rule").values().forEach(origins::rules);
        bundle.texts().forEach((path, text) -> {
            if (KnowledgeFiles.holdsListedNumbers(path)) {
                origins.numbers(path, text);
            }
        });
        return origins;
    }

    /** The lines from one opening to the next; the header stands before the first condition. */
    private void rules(String text) {
        List<MatchResult> openings = RULE.matcher(text).results().toList();
        for (int i = 0; i < openings.size(); i++) {
            int end = i + 1 < openings.size() ? openings.get(i + 1).start() : text.length();
            rule(openings.get(i).group(1), text.substring(openings.get(i).end(), end));
        }
    }

    private void rule(String id, String lines) {
        Matcher when = WHEN.matcher(lines);
        String header = when.find() ? lines.substring(0, when.start()) : lines;
        Matcher change = CHANGE.matcher(header);
        List<String> sources =
                SOURCE.matcher(header).results().map(MatchResult::group).toList();
        rules.put(id, new Origin(change.find() ? change.group(1) : "", sources));
    }

    private void numbers(String path, String text) {
        for (Map.Entry<String, FieldReader> part :
                YamlText.read(path, text, new Faults()).parts().entrySet()) {
            FieldReader number = part.getValue();
            limits.put(
                    part.getKey(),
                    new Origin(
                            number.text("change").orElse(""),
                            number.text("source").stream().toList()));
        }
    }

    List<String> rulesOf(String number) {
        return idsOf(rules, number);
    }

    List<String> limitsOf(String number) {
        return idsOf(limits, number);
    }

    private static List<String> idsOf(SortedMap<String, Origin> all, String number) {
        return all.entrySet().stream()
                .filter(entry -> entry.getValue().change().equals(number))
                .map(Map.Entry::getKey)
                .toList();
    }

    SortedSet<String> sourcesOf(String number) {
        return Stream.concat(rules.values().stream(), limits.values().stream())
                .filter(origin -> origin.change().equals(number))
                .flatMap(origin -> origin.sources().stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    SortedSet<String> idsNotIn(Origins other) {
        SortedSet<String> ids = new TreeSet<>(rules.keySet());
        ids.addAll(limits.keySet());
        ids.removeAll(other.rules.keySet());
        ids.removeAll(other.limits.keySet());
        return ids;
    }
}
