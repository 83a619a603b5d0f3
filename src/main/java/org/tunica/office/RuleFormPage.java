package org.tunica.office;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * A form for one rule of a change.
 *
 * @param number of the change
 * @param id of the rule
 * @param seen the file as it was seen
 * @param path of the file
 * @param conditions in the order of the rule
 * @param conclusion in words; not chosen here
 * @param sources as typed
 * @param standing as chosen
 * @param reviewBy as typed
 * @param because as typed
 * @param known every source
 * @param standings every standing
 * @param faults why it was not saved
 */
public record RuleFormPage(
        Frame frame,
        String number,
        String id,
        String title,
        String seen,
        String path,
        List<Part> conditions,
        String conclusion,
        String sources,
        String standing,
        String reviewBy,
        String because,
        List<RulePage.SourceLine> known,
        List<String> standings,
        List<String> faults) {

    /**
     * One condition.
     *
     * @param place from 0; its fields begin with it
     * @param sentence as it stands
     * @param choices lists to choose one from; none when it is edited as text alone
     * @param words to choose any of; none when it holds no words
     */
    public record Part(int place, String sentence, List<Choice> choices, List<Word> words) {}

    /** A list to choose one from. */
    public record Choice(String field, String label, String chosen, List<Option> options) {}

    /** One of a list. */
    public record Option(String value, String says) {}

    /** A word and whether it is chosen. */
    public record Word(String word, boolean chosen) {}
}
