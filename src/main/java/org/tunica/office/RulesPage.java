package org.tunica.office;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * The rules in use.
 *
 * @param release whose rules they are, in words
 * @param asked what the list was narrowed to
 * @param all how many rules there are
 * @param alarms rules that speak more or less often than before, in words
 */
public record RulesPage(
        Frame frame,
        String release,
        Asked asked,
        List<String> standings,
        int all,
        List<RuleRow> rows,
        List<String> alarms) {

    /**
     * What was asked for.
     *
     * @param stage a digit, or empty
     * @param standing a word, or empty
     * @param review overdue, or empty
     * @param text words that must stand in it
     */
    public record Asked(String stage, String standing, String review, String text) {
        boolean wants(RuleRow row) {
            return (stage.isEmpty() || stage.equals(String.valueOf(row.stage())))
                    && (standing.isEmpty() || standing.equals(row.standing()))
                    && (!review.equals("overdue") || row.overdue())
                    && row.holds(List.of(
                            text.strip().toLowerCase(java.util.Locale.ROOT).split("\\s+")));
        }
    }
}
