package org.tunica.office;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.tunica.knowledge.ChangeRecord;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Standing;
import org.tunica.rules.Rule;
import org.tunica.watching.AnswerRate;
import org.tunica.watching.RuleRate;
import org.tunica.watching.WatchReport;

/**
 * A rule in the list.
 *
 * @param stage 1 to 6
 * @param standing how well it is supported as a whole
 * @param status of the change record that brought it
 * @param owner who wrote it, by role
 * @param sources ids
 * @param numbers the standings of the numbers it names, counted
 * @param overdue whether its review is overdue
 * @param speaks how often it speaks lately
 * @param setAside how often cards that rested on it were set aside lately
 */
public record RuleRow(
        String id,
        String title,
        int stage,
        String standing,
        String status,
        String owner,
        String sources,
        String numbers,
        String reviewBy,
        boolean overdue,
        String speaks,
        String setAside) {

    static RuleRow of(Rule rule, Knowledge knowledge, WatchReport watch, LocalDate day) {
        Optional<ChangeRecord> record = Optional.ofNullable(knowledge.changes().get(rule.change()));
        return new RuleRow(
                rule.id(),
                rule.title(),
                rule.conclusion().kind().stage(),
                rule.standing().word(),
                record.map(one -> one.status().word().replace('-', ' ')).orElse("no record"),
                record.map(one -> one.authors().stream()
                                .map(author -> author.role() + " " + author.initials())
                                .collect(Collectors.joining(", ")))
                        .orElse("not recorded"),
                String.join(", ", rule.sources()),
                numbers(rule, knowledge),
                rule.reviewBy().toString(),
                rule.reviewBy().atEndOfMonth().isBefore(day),
                speaks(rule.id(), watch),
                setAside(rule.id(), watch));
    }

    private static String numbers(Rule rule, Knowledge knowledge) {
        Map<Standing, Integer> counts = new TreeMap<>();
        rule.limitIds()
                .forEach(id -> counts.merge(knowledge.quantity(id).provenance().standing(), 1, Integer::sum));
        return counts.isEmpty()
                ? "none"
                : counts.entrySet().stream()
                        .map(entry -> entry.getValue() + " " + entry.getKey().word())
                        .collect(Collectors.joining(", "));
    }

    static String speaks(String id, WatchReport watch) {
        return watch.rates().stream()
                .filter(rate -> rate.rule().equals(id))
                .map(RuleRow::speaks)
                .findFirst()
                .orElse("no cases yet");
    }

    private static String speaks(RuleRate rate) {
        String share = rate.lately().events() + " of " + rate.lately().total() + " cases ("
                + Math.round(100 * rate.lately().share()) + " %)";
        return rate.alarms() ? share + ", " + rate.drift().word().replace('-', ' ') + " than before" : share;
    }

    static String setAside(String id, WatchReport watch) {
        return watch.ofRules().stream()
                .filter(rate -> rate.id().equals(id))
                .map(RuleRow::setAside)
                .findFirst()
                .orElse("no cards yet");
    }

    private static String setAside(AnswerRate rate) {
        return rate.overridden().events() + " of " + rate.overridden().total() + " cards"
                + (rate.reasons().isEmpty()
                        ? ""
                        : "; most often: " + rate.reasons().get(0).reason());
    }

    /** Whether a text stands anywhere in it. */
    boolean holds(List<String> words) {
        String all = (id + " " + title + " " + sources + " " + owner).toLowerCase(java.util.Locale.ROOT);
        return words.stream().allMatch(all::contains);
    }
}
