package org.tunica.rules;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.tools.ToolProvider;
import org.tunica.knowledge.GlossaryField;

/**
 * Writes the rules as Java of plain fields and {@code if}, one short method for each rule, and compiles it: the floor no
 * engine can pass. It gives the same three-valued verdicts in the same stages.
 */
final class HandWriter {
    private final HandConditions conditions = new HandConditions();
    private final List<Rule> rules;

    private HandWriter(List<Rule> rules) {
        this.rules = rules.stream().sorted(Verdict.ORDER_OF_RULES).toList();
    }

    static HandRules write(List<Rule> rules) {
        try {
            return compiled(new HandWriter(rules).source());
        } catch (IOException | ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private String source() {
        rules.forEach(rule -> rule.onVerdicts().forEach(earlier -> conditions.verdict(earlier.fact())));
        String methods = rules.stream().map(this::method).collect(Collectors.joining());
        String calls = rules.stream()
                .map(rule -> "    " + name(rule) + "(o, s, into);\n")
                .collect(Collectors.joining());
        return """
                package written;
                import java.util.*;
                import org.tunica.knowledge.GlossaryField;
                import org.tunica.rules.*;
                public final class ByHand implements HandRules {
                  static final class Option { OptionKey key; Option[] elsewhere;
                """ + declarations() + """
                  }
                  static final class State {
                """ + states() + """
                  }
                  public Object read(OptionFacts facts, Map<String, GlossaryField> fields) {
                    Option o = new Option(); o.key = facts.key();
                """ + reads(conditions.fields()) + """
                    o.elsewhere = HandReader.elsewhere(facts).stream().map(segment -> other(segment, fields)).toArray(Option[]::new);
                    return o;
                  }
                  static Option other(AnswerBook facts, Map<String, GlossaryField> fields) {
                    Option o = new Option();
                """
                + reads(conditions.fieldsElsewhere()) + """
                    return o;
                  }
                  public void judge(Object option, List<Said> into) {
                    Option o = (Option) option; State s = new State();
                """ + calls + "  }\n" + methods + loops() + "}\n";
    }

    private String method(Rule rule) {
        String fact = EarlierVerdict.factOf(rule);
        String note = conditions.asksFor(fact)
                ? "    if (certain) s.sure" + conditions.verdict(fact) + " = true; else s.doubt"
                        + conditions.verdict(fact) + " = true;\n"
                : "";
        return "  static void " + name(rule) + "(Option o, State s, List<Said> into) {\n    if (!("
                + all(rule, false) + ")) return;\n    boolean certain = " + all(rule, true) + ";\n" + note
                + "    into.add(new Said(\"" + rule.id() + "\", o.key, certain));\n  }\n";
    }

    private String all(Rule rule, boolean certain) {
        return rule.conditions().stream()
                .map(condition -> conditions.java(condition, certain))
                .collect(Collectors.joining(" && "));
    }

    private static String name(Rule rule) {
        return rule.id().replace('-', '_');
    }

    private String declarations() {
        return conditions.fields().stream()
                .map(field -> switch (field.kind()) {
                    case NUMBER -> "double " + HandConditions.name(field) + ";\n";
                    case WORD, FLAG -> "int " + HandConditions.name(field) + ";\n";
                    case SET ->
                        "long " + HandConditions.name(field) + "; boolean " + HandConditions.name(field) + "Known;\n";
                })
                .collect(Collectors.joining());
    }

    private String states() {
        return IntStream.range(0, conditions.verdictsCount())
                .mapToObj(i -> "boolean sure" + i + ", doubt" + i + ";\n")
                .collect(Collectors.joining());
    }

    private String reads(List<GlossaryField> fields) {
        return fields.stream().map(this::read).collect(Collectors.joining());
    }

    private String read(GlossaryField field) {
        String name = "o." + HandConditions.name(field);
        String answer = "facts.answer(fields.get(\"" + field.id() + "\"))";
        return switch (field.kind()) {
            case NUMBER -> name + " = HandReader.number(" + answer + ");\n";
            case FLAG -> name + " = HandReader.flag(" + answer + ");\n";
            case WORD -> name + " = HandReader.word(" + answer + ", " + list(field.values()) + ");\n";
            case SET ->
                name + " = HandReader.bits(" + answer + ", " + list(conditions.bits(field)) + ");\n" + name
                        + "Known = !(" + answer + " instanceof Answer.Unknown);\n";
        };
    }

    private static String list(List<String> words) {
        return words.stream()
                .map(word -> "\"" + word + "\"")
                .collect(Collectors.joining(", ", "List.of(", ")"))
                .replace("List.of()", "List.<String>of()");
    }

    private String loops() {
        return conditions.loops().entrySet().stream()
                .map(loop -> "  static boolean " + loop.getValue()
                        + "(Option here) {\n    for (Option o : here.elsewhere) if (" + loop.getKey()
                        + ") return true;\n    return false;\n  }\n")
                .collect(Collectors.joining());
    }

    private static HandRules compiled(String source) throws IOException, ReflectiveOperationException {
        Path folder = Files.createTempDirectory("by-hand");
        Path file = Files.createDirectories(folder.resolve("written")).resolve("ByHand.java");
        Files.writeString(file, source);
        int result = ToolProvider.getSystemJavaCompiler()
                .run(null, null, null, "-cp", System.getProperty("java.class.path"), file.toString());
        if (result != 0) {
            throw new IllegalStateException(file + " does not compile");
        }
        URLClassLoader loader =
                new URLClassLoader(new URL[] {folder.toUri().toURL()}, HandRules.class.getClassLoader());
        return (HandRules)
                loader.loadClass("written.ByHand").getDeclaredConstructor().newInstance();
    }
}
