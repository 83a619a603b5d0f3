package org.tunica.review;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A scenario of the features, as far as a reviewer needs it.
 *
 * @param place file and line
 * @param tags its own and those of its feature and rule, without the at sign
 * @param kinds what its examples are, for example hit, miss, limit, unknown; empty for a scenario without a table
 */
record Scenario(String place, String name, Set<String> tags, List<String> kinds) {
    private static final Pattern TAG = Pattern.compile("@(\\S+)");
    private static final Pattern TITLE = Pattern.compile("(Feature|Rule|Scenario Outline|Scenario|Example):\\s*(.*)");

    Scenario {
        tags = Set.copyOf(tags);
        kinds = List.copyOf(kinds);
    }

    /** All scenarios of a folder, in order of file and line. */
    static List<Scenario> in(Path folder) throws IOException {
        List<Scenario> all = new ArrayList<>();
        try (Stream<Path> walk = Files.walk(folder)) {
            List<Path> files = walk.filter(file -> file.toString().endsWith(".feature"))
                    .filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
                    .sorted()
                    .toList();
            for (Path file : files) {
                String name = folder.relativize(file).toString().replace('\\', '/');
                all.addAll(new Reader(name).read(Files.readAllLines(file)));
            }
        }
        return all;
    }

    /** What it is called, or what its examples are where the name only holds place-holders. */
    String title() {
        return kinds.isEmpty()
                ? place + ": " + name
                : place + ": " + kinds.size() + " examples (" + String.join(", ", new TreeSet<>(kinds)) + ")";
    }

    /** Reads one file line by line: titles, tags and rows of examples are all that matters here. */
    private static final class Reader {
        private final String file;
        private final List<Scenario> found = new ArrayList<>();
        private Set<String> ofFeature = Set.of();
        private Set<String> ofRule = Set.of();
        private Set<String> pending = new TreeSet<>();
        private boolean inExamples;
        private boolean headRead;

        Reader(String file) {
            this.file = file;
        }

        List<Scenario> read(List<String> lines) {
            for (int i = 0; i < lines.size(); i++) {
                line(lines.get(i).strip(), i + 1);
            }
            return found;
        }

        private void line(String text, int number) {
            Matcher title = TITLE.matcher(text);
            if (text.startsWith("@")) {
                TAG.matcher(text).results().forEach(tag -> pending.add(tag.group(1)));
            } else if (title.matches()) {
                title(title.group(1), title.group(2), number);
            } else if (text.startsWith("Examples:")) {
                inExamples = true;
                headRead = false;
            } else if (text.startsWith("|") && inExamples) {
                row(text);
            }
        }

        private void title(String kind, String name, int number) {
            inExamples = false;
            if (kind.equals("Feature")) {
                ofFeature = pending;
            } else if (kind.equals("Rule")) {
                ofRule = pending;
            } else {
                Set<String> tags = new TreeSet<>(ofFeature);
                tags.addAll(ofRule);
                tags.addAll(pending);
                found.add(new Scenario(file + ":" + number, name, tags, List.of()));
            }
            pending = new TreeSet<>();
        }

        /** The first cell of a row tells the kind of example. */
        private void row(String text) {
            if (headRead) {
                Scenario last = found.remove(found.size() - 1);
                List<String> kinds = new ArrayList<>(last.kinds());
                kinds.add(text.split("\\|", -1)[1].strip());
                found.add(new Scenario(last.place(), last.name(), last.tags(), kinds));
            }
            headRead = true;
        }
    }
}
