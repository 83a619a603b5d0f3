package org.tunica.cli;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.tunica.casefile.UcumWords;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Source;
import org.tunica.plan.Advice;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.Reason;
import org.tunica.wording.SettingWords;

/** The limits and sources that the reasons of an advice name. */
final class SourceText {
    private final Knowledge knowledge;
    private final int width;

    SourceText(Knowledge knowledge, int width) {
        this.knowledge = knowledge;
        this.width = width;
    }

    String of(Advice advice) {
        TreeSet<String> limits = new TreeSet<>();
        TreeSet<String> sources = new TreeSet<>();
        reasons(advice).forEach(reason -> {
            limits.addAll(reason.limits());
            sources.addAll(List.of(reason.source().split(" ")));
        });
        StringBuilder out = new StringBuilder("\nLimits named above\n==================\n");
        limits.forEach(id -> out.append(limit(knowledge.quantity(id))));
        out.append("\nSources named above\n===================\n");
        sources.forEach(id -> out.append(source(knowledge.source(id))));
        return out.toString();
    }

    private static Stream<Reason> reasons(Advice advice) {
        return advice.segments().stream()
                .flatMap(segment -> segment.options().stream())
                .flatMap(SourceText::reasons);
    }

    private static Stream<Reason> reasons(OptionAdvice option) {
        return Stream.of(option.reasons(), option.cautions(), option.needs()).flatMap(List::stream);
    }

    private String limit(Quantity limit) {
        return Wrap.table(
                width,
                List.of(36),
                List.of(List.of(
                        limit.id(),
                        SettingWords.plain(limit.value()) + UcumWords.behind(limit.unit()) + ": " + limit.says() + " ["
                                + limit.provenance().source() + ", "
                                + limit.provenance().standing().word() + "]")));
    }

    private String source(Source source) {
        String doi = source.doi().map(id -> ", doi " + id).orElse("");
        return Wrap.table(
                width,
                List.of(8),
                List.of(List.of(
                        source.id(),
                        source.cites() + doi + " (read: " + source.read().word() + ")")));
    }
}
