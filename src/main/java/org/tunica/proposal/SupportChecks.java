package org.tunica.proposal;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Source;
import org.tunica.knowledge.Standing;
import org.tunica.rules.Rule;

/** On what a change rests, and until when. */
final class SupportChecks {
    /** Standings that claim that somebody wrote it down elsewhere. */
    private static final Set<Standing> CLAIMS_A_READER = EnumSet.of(Standing.PUBLISHED, Standing.GUIDELINE);

    private static final Set<Source.Read> NOT_READ = EnumSet.of(Source.Read.MEMORY, Source.Read.NONE);

    private final Knowledge knowledge;
    private final List<Rule> all;
    private final Touched touched;

    SupportChecks(Knowledge knowledge, List<Rule> all, Touched touched) {
        this.knowledge = knowledge;
        this.all = all;
        this.touched = touched;
    }

    Check sources() {
        List<String> bars = new ArrayList<>();
        touched.rules().forEach(rule -> claims(bars, rule.id(), rule.standing(), rule.sources()));
        touched.numbers()
                .forEach(number -> claims(
                        bars,
                        number.id(),
                        number.provenance().standing(),
                        List.of(number.provenance().source())));
        return Check.unlessNone(Check.Question.SOURCES, Check.Result.BAR, bars);
    }

    private void claims(List<String> bars, String id, Standing standing, List<String> sources) {
        if (sources.isEmpty() && standing != Standing.CONSENSUS) {
            bars.add(id + " names no source and is not marked consensus");
        }
        boolean read = sources.stream().map(knowledge::source).anyMatch(source -> !NOT_READ.contains(source.read()));
        if (!sources.isEmpty() && CLAIMS_A_READER.contains(standing) && !read) {
            bars.add(id + " calls itself " + standing.word() + ", but nobody read " + String.join(", ", sources)
                    + "; until somebody has, it is unverified");
        }
    }

    Check reviewDates(LocalDate day) {
        YearMonth month = YearMonth.from(day);
        List<String> bars = touched.rules().stream()
                .filter(rule -> !rule.reviewBy().isAfter(month))
                .map(rule -> rule.place() + ": " + rule.id() + " is to be reviewed by " + rule.reviewBy()
                        + ", which does not lie ahead")
                .toList();
        List<String> warns = all.stream()
                .filter(rule -> !touched.has(rule.id()) && rule.reviewBy().isBefore(month))
                .map(rule -> rule.id() + " was to be reviewed by " + rule.reviewBy() + " and is not part of the change")
                .toList();
        return Check.of(Check.Question.REVIEW_DATES, bars, warns);
    }

    Check unverified() {
        Stream<String> rules = touched.rules().stream()
                .filter(rule -> rule.standing() == Standing.UNVERIFIED)
                .map(rule -> "rule " + rule.id() + ", " + rule.title() + ": unverified");
        Stream<String> numbers = touched.numbers().stream()
                .filter(number -> number.provenance().standing() == Standing.UNVERIFIED)
                .map(this::unverified);
        return Check.unlessNone(
                Check.Question.UNVERIFIED,
                Check.Result.WARN,
                Stream.concat(rules, numbers).toList());
    }

    private String unverified(Quantity number) {
        List<String> naming = all.stream()
                .filter(rule -> rule.limitIds().contains(number.id()))
                .map(Rule::id)
                .toList();
        return "number " + number.id() + ", " + number.says() + ": unverified"
                + (naming.isEmpty() ? "" : ", named by " + String.join(", ", naming));
    }

    Check hazards(List<String> withoutHazard) {
        if (!withoutHazard.isEmpty()) {
            return new Check(Check.Question.HAZARDS, Check.Result.BAR, withoutHazard);
        }
        return Check.told(
                Check.Question.HAZARDS,
                touched.rules().stream()
                        .flatMap(rule -> rule.hazards().stream().map(id -> rule.id() + " controls " + hazard(id)))
                        .toList());
    }

    private String hazard(String id) {
        return id + ", " + knowledge.hazards().get(id).hazard();
    }

    /** A rule that held something back leaves a gap; whoever signs should see who still stands in it. */
    Check retired(List<String> retired) {
        List<String> warns = new ArrayList<>();
        touched.gone().forEach(rule -> rule.hazards().forEach(hazard -> warns.add(leaves(rule, hazard))));
        List<String> told = retired.stream()
                .map(id -> id + " ends; its records stay and its id is never used again")
                .toList();
        return new Check(
                Check.Question.RETIRED,
                warns.isEmpty() ? Check.Result.PASS : Check.Result.WARN,
                Stream.concat(told.stream(), warns.stream()).toList());
    }

    private String leaves(Rule gone, String hazard) {
        List<String> left = all.stream()
                .filter(rule -> rule.hazards().contains(hazard))
                .map(Rule::id)
                .toList();
        return gone.id() + " controlled " + hazard(hazard)
                + (left.isEmpty() ? "; no rule does any more" : "; still controlled by " + String.join(", ", left));
    }
}
