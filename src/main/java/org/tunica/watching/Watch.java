package org.tunica.watching;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Standing;
import org.tunica.rules.Rule;

/** Watches the rules of one release. Immutable. */
public final class Watch {
    private final Knowledge knowledge;
    private final List<Rule> rules;
    private final WatchNumbers numbers;

    /** A watch over rules with the knowledge they were read with. */
    public Watch(Knowledge knowledge, List<Rule> rules) {
        this.knowledge = knowledge;
        this.rules = List.copyOf(rules);
        this.numbers = WatchNumbers.of(knowledge);
    }

    /**
     * What there was to be seen.
     *
     * @param release version in force, or draft
     * @param releaseReviewBy day by which that release is to be reviewed; absent for a draft
     * @param heard advices, in any order; what lies outside both stretches is passed over
     * @param answered cards answered in the later stretch
     */
    public record Seen(
            String release, Optional<LocalDate> releaseReviewBy, List<Heard> heard, List<Answered> answered) {
        public Seen {
            heard = List.copyOf(heard);
            answered = List.copyOf(answered);
        }
    }

    /** The report of one look. */
    public WatchReport report(Seen seen, Stretches stretches, LocalDate day) {
        List<Heard> now = lastOfEachCase(seen.heard().stream()
                .filter(heard -> stretches.lately(heard.at()))
                .toList());
        List<Heard> before = lastOfEachCase(seen.heard().stream()
                .filter(heard -> stretches.before(heard.at()))
                .toList());
        List<RuleRate> rates = new FiringRates(rules, numbers).of(now, before);
        AnswerRates answers = new AnswerRates(knowledge, rules, seen.answered());
        List<AnswerRate> ofRules = answers.ofRules();
        return new WatchReport(
                seen.release(),
                day,
                stretches,
                now.size(),
                before.size(),
                releases(now, before),
                rates,
                ofRules,
                answers.ofTechniques(),
                answers.unknown(),
                oftenSetAside(rates, ofRules),
                reviews(seen, day),
                unverified());
    }

    private static List<Heard> lastOfEachCase(List<Heard> heard) {
        Map<String, Heard> last = new TreeMap<>();
        heard.stream().sorted(Comparator.comparing(Heard::at)).forEach(advice -> last.put(advice.caseRef(), advice));
        return List.copyOf(last.values());
    }

    private static List<String> releases(List<Heard> now, List<Heard> before) {
        Set<String> releases = new TreeSet<>();
        now.forEach(heard -> releases.add(heard.release()));
        before.forEach(heard -> releases.add(heard.release()));
        return List.copyOf(releases);
    }

    private List<String> oftenSetAside(List<RuleRate> rates, List<AnswerRate> ofRules) {
        Set<String> frequent = rates.stream()
                .filter(rate -> rate.lately().total() >= numbers.minCases())
                .filter(rate -> rate.lately().share() >= numbers.frequentShare())
                .map(RuleRate::rule)
                .collect(Collectors.toSet());
        return ofRules.stream()
                .filter(rate -> rate.overridden().total() >= numbers.minCards())
                .filter(rate -> rate.overridden().share() > numbers.overriddenShare())
                .map(AnswerRate::id)
                .filter(frequent::contains)
                .toList();
    }

    private List<DueReview> reviews(Seen seen, LocalDate day) {
        List<DueReview> due = new ArrayList<>();
        seen.releaseReviewBy()
                .ifPresent(lastDay -> due(due, "release " + seen.release(), "the release in force", lastDay, day));
        rules.forEach(rule -> due(due, rule.id(), rule.title(), rule.reviewBy().atEndOfMonth(), day));
        due.sort(Comparator.comparing(DueReview::lastDay).thenComparing(DueReview::id));
        return due;
    }

    private void due(List<DueReview> due, String id, String title, LocalDate lastDay, LocalDate day) {
        if (lastDay.isBefore(day)) {
            due.add(new DueReview(id, title, lastDay, DueReview.Due.OVERDUE));
        } else if (!lastDay.isAfter(day.plusDays(numbers.reviewSoonDays()))) {
            due.add(new DueReview(id, title, lastDay, DueReview.Due.SOON));
        }
    }

    private List<UnverifiedNumber> unverified() {
        return knowledge.quantities().values().stream()
                .filter(number -> number.provenance().standing() == Standing.UNVERIFIED)
                .map(this::unverified)
                .sorted(Comparator.comparing(
                                (UnverifiedNumber number) -> -number.rules().size())
                        .thenComparing(UnverifiedNumber::id))
                .toList();
    }

    private UnverifiedNumber unverified(Quantity number) {
        List<String> naming = rules.stream()
                .filter(rule -> rule.limitIds().contains(number.id()))
                .map(Rule::id)
                .sorted()
                .toList();
        return new UnverifiedNumber(
                number.id(),
                number.says(),
                Amount.of(number),
                number.provenance().source(),
                naming);
    }
}
