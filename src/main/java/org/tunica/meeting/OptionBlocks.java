package org.tunica.meeting;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.paper.Block;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.OptionStanding;
import org.tunica.plan.Reason;
import org.tunica.plan.SegmentAdvice;
import org.tunica.wording.FirmnessWords;
import org.tunica.wording.ForecastWords;
import org.tunica.wording.ReasonWords;
import org.tunica.wording.SegmentWords;

/** The options of a segment with every reason, as parts of a packet. */
final class OptionBlocks {
    /** What colleagues weigh; findings and settings stand in the advice itself. */
    private static final Set<Reason.Stands> WEIGHING =
            EnumSet.complementOf(EnumSet.of(Reason.Stands.FINDS, Reason.Stands.SETS));

    private final SegmentAdvice advice;
    private final Knowledge knowledge;

    OptionBlocks(SegmentAdvice advice, Knowledge knowledge) {
        this.advice = advice;
        this.knowledge = knowledge;
    }

    List<Block> all() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(SegmentWords.numbers(advice.derived())));
        blocks.add(new Block.Heading("Options"));
        blocks.add(new Block.Table(
                List.of("rank", "technique", "standing", "first in draws", "why"),
                advice.options().stream()
                        .filter(option -> option.standing() != OptionStanding.NOT_IN_ROOM)
                        .map(OptionBlocks::row)
                        .toList()));
        notHere().ifPresent(blocks::add);
        Set<Family> told = EnumSet.noneOf(Family.class);
        advice.options().stream().filter(option -> option.standing().ranked()).forEach(option -> {
            blocks.add(new Block.Heading(option.says()));
            blocks.add(new Block.Points(lines(option, told.add(option.family()))));
        });
        advice.firmness().ifPresent(firmness -> {
            blocks.add(new Block.Heading("How firm the order is"));
            blocks.add(new Block.Points(new FirmnessWords(knowledge, true)
                    .lines(firmness).stream().map(FirmnessWords.Line::text).toList()));
        });
        if (!advice.nearMisses().isEmpty()) {
            blocks.add(new Block.Heading("Close to a limit"));
            blocks.add(new Block.Points(advice.nearMisses().stream()
                    .map(miss -> SegmentWords.nearMiss(miss, knowledge))
                    .toList()));
        }
        return blocks;
    }

    private Optional<Block> notHere() {
        List<String> names = advice.options().stream()
                .filter(option -> option.standing() == OptionStanding.NOT_IN_ROOM)
                .map(OptionAdvice::says)
                .toList();
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of(new Block.Paragraph("Not in the room of this case: " + String.join("; ", names) + "."));
    }

    private static List<String> row(OptionAdvice option) {
        return List.of(
                option.rank().isPresent() ? Integer.toString(option.rank().getAsInt()) : "-",
                option.says(),
                option.standing().word().replace('-', ' '),
                option.firstPlaceShare().isPresent()
                        ? Math.round(100 * option.firstPlaceShare().getAsDouble()) + " %"
                        : "-",
                SegmentWords.why(option));
    }

    /** @param first of its family: others of it share most reasons, so what speaks for them stands in the advice alone */
    private static List<String> lines(OptionAdvice option, boolean first) {
        List<String> lines = new ArrayList<>(ForecastWords.lines(option));
        option.cautions().forEach(caution -> lines.add(ReasonWords.lead(caution) + ReasonWords.line(caution)));
        option.reasons().stream()
                .filter(reason -> WEIGHING.contains(reason.stands()))
                .filter(reason -> first || reason.stands() != Reason.Stands.FOR)
                .forEach(reason -> lines.add(reason.stands().word().replace('-', ' ') + ": " + reason.rule() + ", "
                        + ReasonWords.text(reason) + ReasonWords.origin(reason)));
        return lines;
    }
}
