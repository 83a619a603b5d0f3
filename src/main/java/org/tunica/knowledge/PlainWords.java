package org.tunica.knowledge;

import java.util.List;
import java.util.Map;

/**
 * What a patient sheet is written with.
 *
 * @param ways by id
 * @param figures by id
 * @param sentences that belong to no single way, by id
 */
public record PlainWords(
        Map<String, PlainWay> ways, Map<String, PlainFigure> figures, Map<String, Statement> sentences) {

    /**
     * A sentence by id.
     *
     * @throws IllegalArgumentException when there is none of that id
     */
    public String sentence(String id) {
        Statement statement = sentences.get(id);
        if (statement == null) {
            throw new IllegalArgumentException("no sentence " + id + " in knowledge/plain/");
        }
        return statement.says();
    }

    /**
     * The way a technique works.
     *
     * @throws IllegalArgumentException when it has none
     */
    public PlainWay wayOf(String technique) {
        return ways.values().stream()
                .filter(way -> way.techniques().contains(technique))
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException("no way of knowledge/plain/ has technique " + technique));
    }

    /** The figures of a kind that hold for one of these techniques, in order of id. */
    public List<PlainFigure> figures(PlainFigure.Kind kind, PlainWay way, List<String> techniques) {
        return figures.values().stream()
                .filter(figure -> figure.kind() == kind && figure.ways().contains(way.id()))
                .filter(figure -> figure.techniques().isEmpty()
                        || figure.techniques().stream().anyMatch(techniques::contains))
                .toList();
    }
}
