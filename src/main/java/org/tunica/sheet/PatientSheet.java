package org.tunica.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.PlainFigure;
import org.tunica.knowledge.PlainWay;
import org.tunica.knowledge.PlainWords;
import org.tunica.paper.Block;
import org.tunica.paper.Document;
import org.tunica.plan.Advice;

/**
 * A sheet for the patient of one case. It tells what the options are, what the day is like and what studies found, and
 * recommends nothing. Every word stands in {@code knowledge/plain/}, every figure with its source.
 */
public final class PatientSheet {
    private static final List<String> QUESTIONS = List.of(
            "sheet.ask.why", "sheet.ask.else", "sheet.ask.often", "sheet.ask.drugs", "sheet.ask.work", "sheet.ask.who");

    private static final List<String> SENTENCES = List.of(
            "sheet.title",
            "sheet.draft",
            "sheet.not-advice",
            "sheet.why",
            "sheet.order",
            "sheet.else",
            "sheet.numbers",
            "sheet.no-benefit",
            "sheet.no-harm",
            "sheet.unchecked",
            "sheet.may",
            "sheet.veins-again",
            "sheet.help",
            "sheet.call");

    private final Knowledge knowledge;
    private final PlainWords plain;

    /** @throws IllegalArgumentException when the words lack a sentence, or hold one that is never said */
    public PatientSheet(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.plain = knowledge.plain();
        List<String> said = said().toList();
        said.forEach(plain::sentence);
        plain.sentences().keySet().stream().filter(id -> !said.contains(id)).forEach(id -> {
            throw new IllegalArgumentException("no sheet ever says " + id + " of knowledge/plain/");
        });
    }

    private static Stream<String> said() {
        return Stream.of(
                        SENTENCES.stream(),
                        VeinBlocks.SENTENCES.stream(),
                        QUESTIONS.stream(),
                        Stream.of(Segment.Vein.values()).map(vein -> "vein." + vein.word()),
                        Stream.of(Segment.Level.values()).map(level -> "level." + level.word()))
                .flatMap(ids -> ids);
    }

    /**
     * The sheet of a case.
     *
     * @param chosen id of the technique chosen, by segment; it goes before what the case says
     * @throws org.tunica.casefile.FaultyInput when a rule excludes what is chosen
     */
    public Document of(CaseFile caseFile, Advice advice, Map<String, String> chosen) {
        Map<String, String> all = new TreeMap<>();
        caseFile.limbs().stream()
                .flatMap(limb -> limb.segments().stream())
                .forEach(segment -> segment.chosen().ifPresent(technique -> all.put(segment.ref(), technique)));
        all.putAll(chosen);
        return of(advice, all);
    }

    /**
     * The sheet of an advice.
     *
     * @param chosen id of the technique chosen, by segment
     * @throws org.tunica.casefile.FaultyInput when a rule excludes what is chosen
     */
    Document of(Advice advice, Map<String, String> chosen) {
        List<Picked> picked = advice.segments().stream()
                .map(segment -> Picked.of(segment, Optional.ofNullable(chosen.get(segment.ref()))))
                .toList();
        List<Document.Section> sections = new ArrayList<>();
        sections.add(opening(picked));
        sections.add(new Document.Section("Your veins", new VeinBlocks(plain).of(picked)));
        ways(picked).forEach((way, of) -> sections.add(way(way, of)));
        sections.add(closing());
        sections.add(sources(picked));
        return new Document(
                "en",
                plain.sentence("sheet.title"),
                advice.caseRef(),
                advice.release().mark(),
                List.of(Advice.CAUTION),
                sections);
    }

    private Document.Section opening(List<Picked> picked) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Warning(plain.sentence("sheet.draft")));
        blocks.add(paragraph("sheet.not-advice"));
        blocks.add(paragraph("sheet.why"));
        if (picked.stream().anyMatch(one -> !one.chosen())) {
            blocks.add(paragraph("sheet.order"));
        }
        blocks.add(paragraph("sheet.else"));
        blocks.add(paragraph("sheet.numbers"));
        blocks.add(paragraph("sheet.unchecked"));
        return new Document.Section("What this sheet is for", blocks);
    }

    private Map<PlainWay, List<Picked>> ways(List<Picked> picked) {
        Map<PlainWay, List<Picked>> ways = new LinkedHashMap<>();
        picked.stream()
                .flatMap(one -> one.ways(plain).stream())
                .distinct()
                .sorted(Comparator.comparing(PlainWay::id))
                .forEach(way -> ways.put(
                        way,
                        picked.stream().filter(one -> !one.of(way).isEmpty()).toList()));
        return ways;
    }

    private Document.Section way(PlainWay way, List<Picked> of) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Points(way.what()));
        blocks.add(new Block.Heading("What the day is like"));
        blocks.add(new Block.Lines(List.of(
                new Block.Line("Before", String.join(" ", way.before())),
                new Block.Line("Needles", String.join(" ", way.needles())),
                new Block.Line("How you lie", String.join(" ", way.position())),
                new Block.Line("Time", String.join(" ", way.time())),
                new Block.Line("After", String.join(" ", way.after())))));
        figures(way, of, PlainFigure.Kind.BENEFIT, "What good it did in studies", "sheet.no-benefit", blocks);
        figures(way, of, PlainFigure.Kind.HARM, "What went wrong in studies", "sheet.no-harm", blocks);
        blocks.add(new Block.Heading(plain.sentence("sheet.may")));
        blocks.add(new Block.Points(way.may().says()));
        return new Document.Section(capital(way.name()), blocks);
    }

    private void figures(
            PlainWay way, List<Picked> of, PlainFigure.Kind kind, String heading, String none, List<Block> blocks) {
        blocks.add(new Block.Heading(heading));
        Map<List<Segment.Vein>, List<List<String>>> tables = new LinkedHashMap<>();
        shared(way, of, kind)
                .forEach((figure, veins) -> tables.computeIfAbsent(veins, first -> new ArrayList<>())
                        .add(List.of(FigureText.of(figure), SheetSources.cited(figure.source(), figure.standing()))));
        tables.forEach((veins, rows) -> blocks.add(new Block.Table(List.of(named(veins), "Source"), rows)));
        List<Segment.Vein> without = veinsOf(of).stream()
                .filter(vein -> figures(way, of, kind, vein).findAny().isEmpty())
                .toList();
        if (!without.isEmpty()) {
            blocks.add(new Block.Paragraph(named(without) + ": " + plain.sentence(none)));
        }
    }

    /** Each figure once, with all the veins it is told for: said again for each vein, nobody reads it. */
    private Map<PlainFigure, List<Segment.Vein>> shared(PlainWay way, List<Picked> of, PlainFigure.Kind kind) {
        Map<PlainFigure, List<Segment.Vein>> shared = new LinkedHashMap<>();
        veinsOf(of)
                .forEach(vein -> figures(way, of, kind, vein)
                        .forEach(figure -> shared.computeIfAbsent(figure, first -> new ArrayList<>())
                                .add(vein)));
        return shared;
    }

    private String named(List<Segment.Vein> veins) {
        return capital(veins.stream()
                .map(vein -> plain.sentence("vein." + vein.word()))
                .collect(Collectors.joining("; ")));
    }

    private static List<Segment.Vein> veinsOf(List<Picked> of) {
        return of.stream().map(one -> one.segment().vein()).distinct().sorted().toList();
    }

    /** The figures that hold for a vein and for one of the devices that may be used on it. */
    private Stream<PlainFigure> figures(PlainWay way, List<Picked> of, PlainFigure.Kind kind, Segment.Vein vein) {
        List<String> techniques = of.stream()
                .filter(one -> one.segment().vein() == vein)
                .flatMap(one -> one.of(way).stream())
                .map(option -> option.technique())
                .distinct()
                .toList();
        return plain.figures(kind, way, techniques).stream().filter(figure -> figure.holdsFor(vein));
    }

    private Document.Section closing() {
        return new Document.Section(
                "After you are home, and what to ask",
                List.of(
                        new Block.Warning(plain.sentence("sheet.help")),
                        paragraph("sheet.call"),
                        paragraph("sheet.veins-again"),
                        new Block.Heading("You can ask your specialist"),
                        new Block.Points(QUESTIONS.stream().map(plain::sentence).toList())));
    }

    private Document.Section sources(List<Picked> picked) {
        SheetSources sources = new SheetSources(knowledge);
        ways(picked).forEach((way, of) -> {
            sources.told(way);
            Stream.of(PlainFigure.Kind.values())
                    .forEach(kind -> shared(way, of, kind).keySet().forEach(sources::told));
        });
        return sources.section();
    }

    private Block paragraph(String id) {
        return new Block.Paragraph(plain.sentence(id));
    }

    static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
