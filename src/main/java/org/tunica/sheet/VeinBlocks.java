package org.tunica.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.tunica.knowledge.PlainWay;
import org.tunica.knowledge.PlainWords;
import org.tunica.paper.Block;
import org.tunica.plan.SegmentAdvice;

/** Which way may be talked about for which vein, or was picked for it. */
final class VeinBlocks {
    static final List<String> SENTENCES = List.of(
            "sheet.chosen", "sheet.options", "sheet.options-of-each", "sheet.none", "sheet.careful", "sheet.measure");

    private final PlainWords plain;

    VeinBlocks(PlainWords plain) {
        this.plain = plain;
    }

    /** Veins that are still open stand together, each way once: a list of all ways under every vein fills pages. */
    List<Block> of(List<Picked> picked) {
        List<Picked> open = picked.stream()
                .filter(one -> !one.chosen() && !one.options().isEmpty())
                .toList();
        List<Block> blocks = new ArrayList<>();
        if (open.size() > 1) {
            blocks.addAll(together(open));
        }
        picked.stream().filter(one -> open.size() < 2 || !open.contains(one)).forEach(one -> {
            blocks.add(new Block.Heading(one.segment().ref() + ", " + where(one.segment())));
            blocks.addAll(alone(one));
        });
        return blocks;
    }

    private List<Block> alone(Picked one) {
        List<Block> blocks = new ArrayList<>();
        List<PlainWay> ways = one.ways(plain);
        if (ways.isEmpty()) {
            blocks.add(paragraph("sheet.none"));
        } else {
            blocks.add(paragraph(one.chosen() ? "sheet.chosen" : "sheet.options"));
            blocks.add(new Block.Points(ways.stream()
                    .map(way -> one.careful(way) ? way.name() + careful() : way.name())
                    .toList()));
        }
        if (one.measureFirst()) {
            blocks.add(paragraph("sheet.measure"));
        }
        return blocks;
    }

    private List<Block> together(List<Picked> open) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Lines(open.stream()
                .map(one -> new Block.Line(
                        one.segment().ref(),
                        where(one.segment()) + "." + (one.measureFirst() ? " " + plain.sentence("sheet.measure") : "")))
                .toList()));
        blocks.add(paragraph("sheet.options-of-each"));
        blocks.add(new Block.Lines(open.stream()
                .flatMap(one -> one.ways(plain).stream())
                .distinct()
                .sorted(Comparator.comparing(PlainWay::id))
                .map(way -> new Block.Line(way.name(), veins(open, way)))
                .toList()));
        return blocks;
    }

    private String veins(List<Picked> open, PlainWay way) {
        String freely = refs(open, one -> !one.of(way).isEmpty() && !one.careful(way));
        String carefully = refs(open, one -> !one.of(way).isEmpty() && one.careful(way));
        if (carefully.isEmpty()) {
            return freely;
        }
        return (freely.isEmpty() ? "" : freely + "; ") + carefully + careful();
    }

    private static String refs(List<Picked> open, Predicate<Picked> which) {
        return String.join(
                ", ",
                open.stream().filter(which).map(one -> one.segment().ref()).toList());
    }

    private String careful() {
        return " (" + plain.sentence("sheet.careful") + ")";
    }

    private String where(SegmentAdvice segment) {
        return segment.side().word() + " leg: "
                + plain.sentence("vein." + segment.vein().word()) + ", "
                + plain.sentence("level." + segment.level().word());
    }

    private Block paragraph(String id) {
        return new Block.Paragraph(plain.sentence(id));
    }
}
