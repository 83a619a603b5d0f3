package org.tunica.couch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tunica.knowledge.CodeFile;
import org.tunica.plan.OptionAdvice;

/**
 * Where one of the options of a segment is chosen, as a page shows it.
 *
 * @param told what was chosen before, by whom, when and why; empty while nothing is chosen
 * @param options the ranked ones and "none of these"
 * @param reasons why it is not the first
 * @param words typed
 * @param faults why a choice was not kept
 */
public record ChoiceForm(
        String segment,
        List<String> told,
        List<FormField.Choice> options,
        List<FormField.Choice> reasons,
        String words,
        List<String> faults) {
    /** The word for a way that is not judged here. */
    static final String NONE = "none-of-these";

    static final int LONGEST_WORDS = 1_000;

    private static final String NONE_SAYS = "none of these: another way, or nothing for now";

    public ChoiceForm {
        told = List.copyOf(told);
        options = List.copyOf(options);
        reasons = List.copyOf(reasons);
        faults = List.copyOf(faults);
    }

    /** What was sent of it. */
    record Sent(String technique, String reason, String words) {
        static final Sent NOTHING = new Sent("", "", "");
    }

    static ChoiceForm of(
            String segment,
            List<OptionAdvice> ranked,
            List<CodeFile.OverrideReason> why,
            List<String> told,
            Sent sent,
            List<String> faults) {
        List<FormField.Choice> options = new ArrayList<>();
        ranked.forEach(option -> options.add(new FormField.Choice(
                option.technique(),
                option.rank().orElse(0) + ". " + option.says() + ", "
                        + option.standing().word().replace('-', ' '),
                option.technique().equals(sent.technique()))));
        options.add(new FormField.Choice(NONE, NONE_SAYS, NONE.equals(sent.technique())));
        List<FormField.Choice> reasons = new ArrayList<>();
        reasons.add(new FormField.Choice(
                "", "choose where it is not the first", sent.reason().isEmpty()));
        why.forEach(one -> reasons.add(
                new FormField.Choice(one.code(), one.says(), one.code().equals(sent.reason()))));
        return new ChoiceForm(segment, told, options, reasons, sent.words(), faults);
    }

    /** Everything that is wrong with what was sent. */
    static List<String> faults(List<OptionAdvice> ranked, List<CodeFile.OverrideReason> why, Sent sent) {
        List<String> faults = new ArrayList<>();
        boolean known = sent.technique().equals(NONE)
                || ranked.stream().anyMatch(option -> option.technique().equals(sent.technique()));
        if (!known) {
            faults.add("Choose one of the options.");
        }
        boolean first = sent.technique().equals(ranked.get(0).technique());
        if (known && !first && reason(why, sent).isEmpty()) {
            faults.add("Say why it is not the first option: choose a reason.");
        }
        if (sent.words().length() > LONGEST_WORDS) {
            faults.add("Your words are longer than " + LONGEST_WORDS + " signs.");
        }
        return faults;
    }

    static Optional<CodeFile.OverrideReason> reason(List<CodeFile.OverrideReason> why, Sent sent) {
        return why.stream().filter(one -> one.code().equals(sent.reason())).findFirst();
    }

    /** The choice that was sent, which has no fault. */
    static Choice choice(
            String segment, List<OptionAdvice> ranked, List<CodeFile.OverrideReason> why, Sent sent, String card) {
        Optional<OptionAdvice> chosen = ranked.stream()
                .filter(option -> option.technique().equals(sent.technique()))
                .findFirst();
        OptionAdvice first = ranked.get(0);
        Optional<CodeFile.OverrideReason> reason =
                chosen.equals(Optional.of(first)) ? Optional.empty() : reason(why, sent);
        return new Choice(
                segment,
                chosen.map(OptionAdvice::technique),
                chosen.map(OptionAdvice::says).orElse(NONE_SAYS),
                chosen.map(option -> option.standing().word()),
                first.technique(),
                reason.map(CodeFile.OverrideReason::code),
                reason.map(CodeFile.OverrideReason::says),
                Optional.of(sent.words()).filter(words -> !words.isBlank()),
                card);
    }
}
