package org.tunica.pastcases;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.tunica.anonymity.Alikeness;
import org.tunica.anonymity.Ladder;
import org.tunica.anonymity.Recoding;
import org.tunica.anonymity.Row;
import org.tunica.anonymity.Tried;
import org.tunica.knowledge.FieldDecision;
import org.tunica.knowledge.Knowledge;

/**
 * How well nobody can be found in a base of past cases, {@code tunica-anonymity/1}, for the one who answers for it.
 *
 * @param caution what the counts do not say
 * @param cases past cases; a person treated twice counts twice
 * @param invented how many of them were made up
 * @param kAsked fewest that must look alike
 * @param k fewest that do; 0 of an empty base
 * @param distinctL fewest different things that could be learned of a group
 * @param below cases in groups smaller than k asked
 * @param sizes of the groups
 * @param rare conditions that fewer than k asked have; each counts among what an outsider could know
 * @param told what counts as known to an outsider, and how coarse it can be told
 * @param fields what became of the fields of the records, by decision
 * @param mildest recoding after which nothing has to be held back, for the house and for outside
 * @param recodings every combination, the mildest first
 */
public record AnonymityReport(
        String format,
        String caution,
        int cases,
        int invented,
        int kAsked,
        int k,
        int distinctL,
        int below,
        List<Sizes> sizes,
        Set<String> rare,
        List<Told> told,
        Map<FieldDecision, List<String>> fields,
        List<Mildest> mildest,
        List<Coarser> recodings) {

    /** The format of this record. */
    public static final String FORMAT = "tunica-anonymity/1";

    private static final String CAUTION =
            "k counts past cases: one person treated twice counts twice, so a group of k may be fewer people. What an"
                    + " outsider could know is taken to be what is listed here; somebody who knows measurements of a"
                    + " scan could know more. It counts; whether a base may be passed on is for the data protection"
                    + " officer to decide.";

    /** Groups of one size. */
    public record Sizes(int size, int groups, int cases) {}

    /** One thing an outsider could know and the ways to tell it. */
    public record Told(String name, List<String> ways) {}

    /** The mildest recoding that reaches a k. */
    public record Mildest(int k, Optional<Coarser> recoding) {}

    /**
     * One recoding.
     *
     * @param ways one for each thing told
     * @param lossShare 0 nothing is lost to 1 everything
     * @param heldBack cases that would have to be held back for k asked
     */
    public record Coarser(List<String> ways, double lossShare, int k, int distinctL, int heldBack) {}

    /** The report on past cases, which are gone through once. */
    public static AnonymityReport of(Knowledge knowledge, EachCase cases) {
        AnonymityLimits limits = AnonymityLimits.of(knowledge);
        Crowd crowd = new Crowd();
        cases.to(crowd::add);
        List<Ladder> ladders = Ladders.of(knowledge);
        List<Row> rows = crowd.rows(limits.k());
        Alikeness alike = Alikeness.of(rows, ladders, Recoding.none(ladders));
        List<Tried> tried = Tried.all(rows, ladders, limits.k());
        Set<String> rare = crowd.rare(false, limits.k());
        rare.addAll(crowd.rare(true, limits.k()));
        return new AnonymityReport(
                FORMAT,
                CAUTION,
                crowd.size(),
                crowd.invented(),
                limits.k(),
                alike.k(),
                alike.distinctL(),
                alike.below(limits.k()),
                sizes(alike),
                rare,
                ladders.stream()
                        .map(ladder -> new Told(
                                ladder.name(),
                                ladder.rungs().stream().map(Ladder.Rung::says).toList()))
                        .toList(),
                fields(knowledge),
                List.of(mildest(limits.k(), tried, ladders), mildest(limits.kOutside(), tried, ladders)),
                tried.stream().map(one -> coarser(one, ladders)).toList());
    }

    private static Map<FieldDecision, List<String>> fields(Knowledge knowledge) {
        Map<FieldDecision, List<String>> fields = new EnumMap<>(FieldDecision.class);
        knowledge.decisions().forEach((field, decision) -> {
            if (decision != FieldDecision.PARTS) {
                fields.computeIfAbsent(decision, none -> new ArrayList<>()).add(field);
            }
        });
        return fields;
    }

    private static List<Sizes> sizes(Alikeness alike) {
        TreeMap<Integer, Integer> groups = new TreeMap<>();
        alike.groups().forEach(group -> groups.merge(group.size(), 1, Integer::sum));
        List<Sizes> sizes = new ArrayList<>();
        groups.forEach((size, count) -> sizes.add(new Sizes(size, count, size * count)));
        return sizes;
    }

    private static Mildest mildest(int k, List<Tried> tried, List<Ladder> ladders) {
        return new Mildest(
                k, tried.stream().filter(one -> one.k() >= k).findFirst().map(one -> coarser(one, ladders)));
    }

    private static Coarser coarser(Tried tried, List<Ladder> ladders) {
        List<String> ways = IntStream.range(0, ladders.size())
                .mapToObj(i -> ladders.get(i)
                        .rungs()
                        .get(tried.recoding().rungs().get(i))
                        .says())
                .toList();
        return new Coarser(ways, tried.lossShare(), tried.k(), tried.distinctL(), tried.heldBack());
    }
}
