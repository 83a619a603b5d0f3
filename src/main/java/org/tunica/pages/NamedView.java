package org.tunica.pages;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.tunica.casefile.UcumWords;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Source;
import org.tunica.plan.Advice;
import org.tunica.plan.Reason;
import org.tunica.wording.SettingWords;

/**
 * The limits and sources that the reasons of an advice name, so that every number can be followed to where it comes from.
 *
 * @param limits by id
 * @param sources by id
 */
public record NamedView(List<LimitView> limits, List<SourceView> sources) {
    /** A limit: what it is, its value with unit, its source, and how it stands. */
    public record LimitView(String id, String value, String says, String source, String standing) {}

    /** A source, and how much of it was read. */
    public record SourceView(String id, String cites, String read) {}

    static NamedView of(Advice advice, Knowledge knowledge) {
        TreeSet<String> limits = new TreeSet<>();
        TreeSet<String> sources = new TreeSet<>();
        reasons(advice).forEach(reason -> {
            limits.addAll(reason.limits());
            sources.addAll(List.of(reason.source().split(" ")));
        });
        limits.forEach(id -> sources.add(knowledge.quantity(id).provenance().source()));
        return new NamedView(
                limits.stream().map(knowledge::quantity).map(NamedView::limit).toList(),
                sources.stream().map(knowledge::source).map(NamedView::source).toList());
    }

    private static Stream<Reason> reasons(Advice advice) {
        return advice.segments().stream()
                .flatMap(segment -> Stream.concat(
                        segment.hardCase().stream(),
                        segment.options().stream()
                                .flatMap(option -> Stream.of(option.reasons(), option.cautions(), option.needs())
                                        .flatMap(List::stream))));
    }

    private static LimitView limit(Quantity limit) {
        return new LimitView(
                limit.id(),
                SettingWords.plain(limit.value()) + UcumWords.behind(limit.unit()),
                limit.says(),
                limit.provenance().source(),
                limit.provenance().standing().word());
    }

    private static SourceView source(Source source) {
        String doi = source.doi().map(id -> ", doi " + id).orElse("");
        return new SourceView(source.id(), source.cites() + doi, source.read().word());
    }
}
