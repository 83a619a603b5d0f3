package org.tunica.meeting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.Tunica;
import org.tunica.outcomes.WhatHappened;
import org.tunica.paper.Block;
import org.tunica.plan.Advice;
import org.tunica.plan.SimilarAdvice;
import org.tunica.similar.SimilarCases;
import org.tunica.wording.SettingWords;

/** Past segments like one of the case and what happened to them, as parts of a packet. */
final class SimilarBlocks {
    private final Tunica tunica;
    private final Advice.Release release;
    private final Optional<SimilarCases> similar;

    SimilarBlocks(Tunica tunica, Advice.Release release, Optional<SimilarCases> similar) {
        this.tunica = tunica;
        this.release = release;
        this.similar = similar;
    }

    List<Block> of(String ref) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("Past cases like it"));
        if (similar.isEmpty()) {
            blocks.add(
                    new Block.Paragraph("No past case has been released here yet, so there is none to compare with."));
            return blocks;
        }
        SimilarCases found = similar.get();
        if (found.invented()) {
            blocks.add(new Block.Warning(found.base()));
        } else {
            blocks.add(new Block.Paragraph(found.base()));
        }
        blocks.add(new Block.Paragraph(SimilarAdvice.SAYS));
        found.segments().stream()
                .filter(one -> one.ref().equals(ref))
                .findFirst()
                .ifPresent(one -> {
                    blocks.add(nearest(one.similar()));
                    if (!one.similar().happened().isEmpty()) {
                        blocks.add(new Block.Points(one.similar().happened()));
                    }
                    one.whatHappened().ifPresent(happened -> blocks.addAll(happened(ref, happened)));
                });
        return blocks;
    }

    private Block nearest(SimilarAdvice advice) {
        if (advice.nearest().isEmpty()) {
            return new Block.Paragraph("None of them is alike enough to be told: " + advice.tooLittleKnown() + " of "
                    + advice.considered() + " have too little in common with it.");
        }
        return new Block.Table(
                List.of("alike", "where", "wall; lumen; nerve", "treated with", "how it went"),
                advice.nearest().stream().map(this::row).toList());
    }

    private List<String> row(SimilarAdvice.Nearest one) {
        return List.of(
                one.similarity().isPresent() ? Math.round(100 * one.similarity().getAsDouble()) + " %" : "-",
                one.side().word() + " " + one.vein().word().replace('-', ' ') + ", "
                        + one.level().word().replace('-', ' ') + (one.invented() ? " INVENTED" : ""),
                mm(one.relaxedWallMm()) + "; " + mm(one.relaxedLumenMm()) + "; " + mm(one.nerveGapMm()),
                tunica.knowledge().technique(one.technique()).says()
                        + (one.settings().isEmpty() ? "" : ", " + one.settings()),
                one.happened());
    }

    private static String mm(OptionalDouble value) {
        return value.isPresent() ? SettingWords.plain(value.getAsDouble()) + " mm" : "not recorded";
    }

    private List<Block> happened(String ref, WhatHappened happened) {
        String whom = "the past segments most like " + ref;
        return tunica.likeness().curves(release).blocks(whom, happened);
    }
}
