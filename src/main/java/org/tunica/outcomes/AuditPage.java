package org.tunica.outcomes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tunica.paper.Block;
import org.tunica.paper.Document;

/** An audit as a page: the same words and tables on paper and as text. */
final class AuditPage {
    private final OutcomeNumbers numbers;
    private final AuditDrawings drawings;

    AuditPage(OutcomeNumbers numbers, AuditDrawings drawings) {
        this.numbers = numbers;
        this.drawings = drawings;
    }

    Document of(Audit audit) {
        List<Document.Section> sections = opening(audit);
        WatchBlocks watch = new WatchBlocks(numbers);
        OutcomeBlocks outcomes = new OutcomeBlocks(numbers);
        SplitBlocks splits = new SplitBlocks(numbers);
        for (AuditedTechnique one : audit.techniques()) {
            List<Block> blocks = new ArrayList<>(outcomes.counted(one.outcome()));
            blocks.addAll(outcomes.stayed(one.outcome()));
            drawings.curve(one).ifPresent(blocks::add);
            blocks.addAll(watch.of(one));
            drawings.chart(one).ifPresent(blocks::add);
            blocks.addAll(splits.years(one.byYear()));
            drawings.years(one).ifPresent(blocks::add);
            blocks.addAll(splits.sites(one.bySite()));
            drawings.sites(one).ifPresent(blocks::add);
            blocks.addAll(outcomes.wentWrong(one.outcome()));
            sections.add(new Document.Section(OutcomeBlocks.heading(one.outcome()), blocks));
        }
        if (!audit.compared().isEmpty()) {
            sections.add(new Document.Section("Two curves compared", compared(audit)));
        }
        return document(audit, sections);
    }

    /** The beginning of the whole page alone. */
    Document glance(Audit audit) {
        return document(audit, opening(audit));
    }

    private List<Document.Section> opening(Audit audit) {
        List<Document.Section> sections = new ArrayList<>();
        sections.add(new Document.Section("What was looked at", lookedAt(audit)));
        if (!audit.techniques().isEmpty()) {
            sections.add(new Document.Section("At a glance, at one year", new GlanceBlocks(numbers).of(audit)));
        }
        return sections;
    }

    private static Document document(Audit audit, List<Document.Section> sections) {
        List<Document.Section> all = new ArrayList<>(sections);
        all.add(new Document.Section("How to read these figures", List.of(new Block.Points(audit.cautions()))));
        return new Document(
                "en",
                "Outcome audit",
                asked(audit.asked()),
                audit.invented() ? "INVENTED" : "",
                audit.invented() ? List.of(audit.caution(), Cautions.INVENTED) : List.of(audit.caution()),
                all);
    }

    static String asked(AuditQuestion asked) {
        String years = asked.fromYear().isEmpty() && asked.toYear().isEmpty()
                ? "all years"
                : "years " + year(asked.fromYear().stream().boxed().findFirst(), "first") + " to "
                        + year(asked.toYear().stream().boxed().findFirst(), "last");
        String techniques = asked.compare().isEmpty()
                ? asked.technique().orElse("all techniques")
                : String.join(" and ", asked.compare());
        return asked.site().orElse("all sites") + ", " + techniques + ", " + years;
    }

    private static String year(Optional<Integer> year, String open) {
        return year.map(value -> Integer.toString(value)).orElse(open);
    }

    private static List<Block> lookedAt(Audit audit) {
        List<Block> blocks = new ArrayList<>();
        List<Block.Line> lines = new ArrayList<>();
        lines.add(new Block.Line(
                "Treated segments",
                audit.segments().isPresent()
                        ? Integer.toString(audit.segments().getAsInt())
                        : "not told, for it would tell the size of a small group"));
        lines.add(new Block.Line("Never followed", Said.counted(audit.neverFollowed())));
        lines.add(new Block.Line("Without a year of treatment", Said.counted(audit.withoutYear())));
        blocks.add(new Block.Lines(lines));
        if (audit.techniques().isEmpty()) {
            blocks.add(new Block.Paragraph("There is no group large enough to tell of."));
        }
        if (!audit.notTold().isEmpty()) {
            blocks.add(new Block.Heading("Too few to tell of"));
            blocks.add(new Block.Points(OutcomeBlocks.notTold(audit.notTold())));
        }
        return blocks;
    }

    private static List<Block> compared(Audit audit) {
        List<Block> blocks = new ArrayList<>();
        for (Compared one : audit.compared()) {
            one.closure()
                    .ifPresent(closure -> blocks.add(new Block.Heading("By the definition " + Said.words(closure))));
            one.logRank().ifPresent(found -> {
                blocks.add(new Block.Table(
                        List.of("technique", "opened", "would have, if both ran the same risk"),
                        List.of(
                                List.of(
                                        one.techniques().get(0),
                                        Integer.toString(found.first().observed()),
                                        Said.tenths(found.first().expected())),
                                List.of(
                                        one.techniques().get(1),
                                        Integer.toString(found.second().observed()),
                                        Said.tenths(found.second().expected())))));
                blocks.add(new Block.Paragraph("Log-rank: chi-square " + Said.tenths(found.chiSquare())
                        + " with one degree of freedom; chance alone makes such a difference "
                        + Said.chance(found.chanceProbability()) + "."));
            });
            blocks.add(new Block.Paragraph(one.says()));
        }
        return blocks;
    }
}
