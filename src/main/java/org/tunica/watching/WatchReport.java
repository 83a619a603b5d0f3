package org.tunica.watching;

import java.time.LocalDate;
import java.util.List;

/**
 * What was seen of the rules in use: the document {@code tunica-watch/1}.
 *
 * @param release version of the rules in force
 * @param day of the look, UTC
 * @param casesNow cases with an advice in the later stretch
 * @param casesBefore in the earlier one
 * @param releases versions behind the advices of both stretches
 * @param rates of every rule, those that call for a look first, then the most frequent
 * @param ofRules how often cards of each rule were set aside, the most first
 * @param ofTechniques likewise of each technique
 * @param unknownCards answers to cards of which nothing was kept
 * @param oftenSetAside ids of rules that speak often and whose cards are mostly set aside
 * @param reviews overdue, then soon due
 * @param unverified numbers in use that nobody checked
 */
public record WatchReport(
        String release,
        LocalDate day,
        Stretches stretches,
        int casesNow,
        int casesBefore,
        List<String> releases,
        List<RuleRate> rates,
        List<AnswerRate> ofRules,
        List<AnswerRate> ofTechniques,
        int unknownCards,
        List<String> oftenSetAside,
        List<DueReview> reviews,
        List<UnverifiedNumber> unverified) {
    /** The word the document carries under {@code format}. */
    public static final String FORMAT = "tunica-watch/1";

    public WatchReport {
        releases = List.copyOf(releases);
        rates = List.copyOf(rates);
        ofRules = List.copyOf(ofRules);
        ofTechniques = List.copyOf(ofTechniques);
        oftenSetAside = List.copyOf(oftenSetAside);
        reviews = List.copyOf(reviews);
        unverified = List.copyOf(unverified);
    }

    /** Rules that speak more or less often than before. */
    public List<RuleRate> alarms() {
        return rates.stream().filter(RuleRate::alarms).toList();
    }

    /** The document; the same report gives the same bytes. */
    public String toJson() {
        return WatchReportText.of(this);
    }
}
