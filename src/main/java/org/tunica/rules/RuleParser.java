package org.tunica.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tunica.casefile.Faults;
import org.tunica.knowledge.Knowledge;

/** Parses rule files into rules; every wrong line is noted with file and line, none is guessed. */
final class RuleParser {
    static final int LONGEST_LINE = 300;
    static final int MOST_RULES = 5_000;
    static final int MOST_RULES_OF_A_FILE = 500;
    static final int MOST_LINES_OF_A_RULE = 40;

    private static final Pattern OPENING = Pattern.compile("rule ([A-Z]{3}-\\d{3})  +(\\S.*)");
    private static final Pattern UNPRINTABLE = Pattern.compile("[^ -~]");

    private final Faults faults;
    private final RuleHeader header;
    private final Sentences sentences;
    private final Conclusions conclusions;

    RuleParser(Knowledge knowledge, Faults faults) {
        this.faults = faults;
        this.header = new RuleHeader();
        this.sentences = new Sentences(knowledge);
        this.conclusions = new Conclusions(knowledge, sentences);
    }

    /** The rules of all files, in order of file and line; faulty ones are left out and noted. */
    List<Rule> parse(SortedMap<String, String> files) {
        List<Rule> rules = new ArrayList<>();
        int read = 0;
        for (Map.Entry<String, String> file : files.entrySet()) {
            List<RuleBlock> blocks = blocks(file.getKey(), file.getValue());
            read += blocks.size();
            if (read > MOST_RULES) {
                faults.add(file.getKey(), "there are more than " + MOST_RULES + " rules; the reading ended here");
                return rules;
            }
            if (fits(file.getKey(), blocks)) {
                blocks.forEach(block -> rule(block, rules));
            }
        }
        return rules;
    }

    private boolean fits(String file, List<RuleBlock> blocks) {
        if (blocks.isEmpty()) {
            faults.add(file, "holds no rule");
        } else if (blocks.size() > MOST_RULES_OF_A_FILE) {
            faults.add(file, "holds more than " + MOST_RULES_OF_A_FILE + " rules");
        }
        return blocks.size() <= MOST_RULES_OF_A_FILE;
    }

    private List<RuleBlock> blocks(String file, String text) {
        List<RuleBlock> blocks = new ArrayList<>();
        String[] lines = lines(file, text);
        if (!lines[0].startsWith("# ")) {
            faults.add(file + ":1", "a rule file starts with \"# \" and the question it answers");
        }
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i];
            String place = file + ":" + (i + 1);
            boolean readable = readable(line, place);
            if (line.startsWith("rule ")) {
                blocks.add(new RuleBlock(place, line));
            } else if (readable && !line.isBlank() && !line.startsWith("#")) {
                addTo(blocks, place, line);
            }
        }
        return blocks;
    }

    private void addTo(List<RuleBlock> blocks, String place, String line) {
        if (blocks.isEmpty()) {
            faults.add(place, "expected \"rule <ID>  <sentence>\" before anything else");
        } else {
            blocks.get(blocks.size() - 1).add(place, line);
        }
    }

    private String[] lines(String file, String text) {
        if (text.contains("\r\n")) {
            faults.add(file + ":1", "its lines end with carriage return and line feed; save it with line feeds alone");
        }
        return text.replace("\r\n", "\n").split("\n", -1);
    }

    private boolean readable(String line, String place) {
        if (line.length() > LONGEST_LINE) {
            faults.add(place, "the line is longer than " + LONGEST_LINE + " characters");
            return false;
        }
        Matcher strange = UNPRINTABLE.matcher(line);
        if (strange.find()) {
            faults.add(
                    place,
                    String.format(
                            Locale.ROOT,
                            "column %d holds the character U+%04X; only printable ASCII is read",
                            strange.start() + 1,
                            line.codePointAt(strange.start())));
            return false;
        }
        return true;
    }

    private void rule(RuleBlock block, List<Rule> rules) {
        int before = faults.count();
        Matcher opening = OPENING.matcher(block.opening());
        if (!opening.matches()) {
            faults.add(block.place(), "expected \"rule <ABC-123>  <sentence>\" with two blanks after the id");
        }
        if (block.linesCount() > MOST_LINES_OF_A_RULE) {
            faults.add(block.place(), "the rule has more than " + MOST_LINES_OF_A_RULE + " lines");
            return;
        }
        block.sort(faults);
        RuleHeader.Read read = header.read(block.header(), faults);
        List<Condition> conditions = conditions(block);
        Conclusion conclusion = conclusion(block);
        if (faults.count() == before && read != null && conclusion != null) {
            rules.add(new Rule(
                    opening.group(1),
                    opening.group(2).strip(),
                    read.sources(),
                    read.standing(),
                    read.change(),
                    read.reviewBy(),
                    read.ruleClass(),
                    read.hazards(),
                    conditions,
                    conclusion,
                    block.because(),
                    block.place()));
        }
    }

    private List<Condition> conditions(RuleBlock block) {
        List<Condition> conditions = new ArrayList<>();
        for (RuleBlock.Line line : block.conditions()) {
            try {
                Condition condition = sentences.condition(line.text());
                if (conditions.contains(condition)) {
                    faults.add(line.place(), "the condition stands twice");
                }
                conditions.add(condition);
            } catch (SentenceFault e) {
                faults.add(line.place(), e.getMessage());
            }
        }
        return conditions;
    }

    private Conclusion conclusion(RuleBlock block) {
        RuleBlock.Line line = block.conclusion();
        try {
            return line.text().isEmpty() ? null : conclusions.conclusion(line.text());
        } catch (SentenceFault e) {
            faults.add(line.place(), e.getMessage());
            return null;
        }
    }
}
