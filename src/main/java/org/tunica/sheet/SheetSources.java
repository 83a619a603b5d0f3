package org.tunica.sheet;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.PlainFigure;
import org.tunica.knowledge.PlainWay;
import org.tunica.knowledge.Source;
import org.tunica.knowledge.Standing;
import org.tunica.paper.Block;
import org.tunica.paper.Document;

/** Where everything stands that a sheet told, and what each study counted. For the specialist who hands the sheet out. */
final class SheetSources {
    private final Knowledge knowledge;
    private final Set<PlainWay> ways = new LinkedHashSet<>();
    private final Map<String, Set<PlainFigure>> figures = new TreeMap<>();

    SheetSources(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    /** The way was told without figures. */
    void told(PlainWay way) {
        ways.add(way);
        figures.computeIfAbsent(way.source(), first -> new LinkedHashSet<>());
        figures.computeIfAbsent(way.may().source(), first -> new LinkedHashSet<>());
    }

    void told(PlainFigure figure) {
        figures.computeIfAbsent(figure.source(), first -> new LinkedHashSet<>()).add(figure);
    }

    Document.Section section() {
        List<Block.Line> lines = figures.entrySet().stream()
                .map(source -> new Block.Line(source.getKey(), source(source.getKey()) + counted(source.getValue())))
                .toList();
        return new Document.Section(
                "For your specialist: sources, and what each study counted",
                List.of(new Block.Paragraph(withoutFigures()), new Block.Lines(lines)),
                true);
    }

    static String cited(String source, Standing standing) {
        return source + ", " + standing.word();
    }

    private String withoutFigures() {
        return ways.stream()
                .map(way -> PatientSheet.capital(way.name()) + ": the day " + cited(way.source(), way.standing())
                        + ", what else can happen "
                        + cited(way.may().source(), way.may().standing()) + ".")
                .collect(Collectors.joining(" "));
    }

    private String source(String id) {
        Source source = knowledge.source(id);
        String doi = source.doi().map(text -> ", doi " + text).orElse("");
        return source.cites() + doi + " (read: " + source.read().word() + ").";
    }

    /** Figures of one study that count the same thing stand before one definition. */
    private static String counted(Set<PlainFigure> figures) {
        Map<String, Set<String>> byDefinition = new LinkedHashMap<>();
        figures.forEach(figure -> byDefinition
                .computeIfAbsent(figure.definition(), first -> new LinkedHashSet<>())
                .add(FigureText.of(figure)));
        return byDefinition.entrySet().stream()
                .map(same -> " " + String.join(" ", same.getValue()) + " Counted: " + same.getKey() + ".")
                .collect(Collectors.joining());
    }
}
