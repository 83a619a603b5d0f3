package org.tunica.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.tunica.paper.Block;

/**
 * A changed segment as blocks.
 *
 * @param techniques techniques in words, by id
 */
record SegmentBlocks(Map<String, String> techniques) {
    List<Block> of(ReplayedSegment segment) {
        ChangedSegment change = segment.change();
        List<Block.Line> lines = new ArrayList<>();
        lines.add(new Block.Line("What", change.gravity().says()));
        lines.add(new Block.Line("Leads", leads(change)));
        standings(change).forEach((became, which) -> lines.add(new Block.Line(became, String.join("; ", which))));
        change.options()
                .forEach(option -> option.settings()
                        .forEach(setting -> lines.add(
                                new Block.Line("Settings of " + name(option.technique()), setting.sentence()))));
        change.turns().forEach(turn -> lines.add(new Block.Line("Because", because(turn))));
        return List.of(new Block.Heading(segment.where()), new Block.Lines(lines));
    }

    private String leads(ChangedSegment change) {
        if (change.firstBefore().equals(change.firstAfter())) {
            return change.firstAfter().map(first -> "as before, " + name(first)).orElse("nothing, as before");
        }
        return "was " + first(change.firstBefore()) + ", is " + first(change.firstAfter());
    }

    private String first(Optional<String> technique) {
        return technique.map(this::name).orElse("nothing");
    }

    /** Options by what became of them. */
    private Map<String, List<String>> standings(ChangedSegment change) {
        Map<String, List<String>> became = new TreeMap<>();
        change.options().stream()
                .filter(ChangedOption::standsOtherwise)
                .forEach(option -> became.computeIfAbsent(became(option), same -> new ArrayList<>())
                        .add(name(option.technique())));
        return became;
    }

    private static String became(ChangedOption option) {
        String before = option.before().map(standing -> standing.word()).orElse("not known");
        String after = option.after().map(standing -> standing.word()).orElse("not known");
        return "Was " + before + ", is " + after;
    }

    private String because(Turn turn) {
        return turn.rule() + " " + turn.act().says() + " (" + turn.title() + ")"
                + (turn.limits().isEmpty()
                        ? ""
                        : "; "
                                + String.join(
                                        "; ",
                                        turn.limits().stream()
                                                .map(MovedLimit::sentence)
                                                .toList()));
    }

    private String name(String technique) {
        return techniques.getOrDefault(technique, technique);
    }
}
