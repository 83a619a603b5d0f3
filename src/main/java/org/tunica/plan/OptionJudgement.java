package org.tunica.plan;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * How one option stands, by which rules and with which settings; no words.
 *
 * @param technique id
 * @param voices what the rules say about it, in the order of their ids
 */
public record OptionJudgement(
        String technique, OptionStanding standing, SettingsAdvice settings, List<RuleVoice> voices) {
    static final Comparator<RuleVoice> BY_RULE = Comparator.comparing(RuleVoice::rule);

    public OptionJudgement {
        voices = List.copyOf(voices);
    }

    static OptionJudgement of(OptionAdvice advice) {
        List<RuleVoice> voices = Stream.of(advice.reasons(), advice.cautions(), advice.needs())
                .flatMap(List::stream)
                .map(RuleVoice::of)
                .sorted(BY_RULE)
                .toList();
        return new OptionJudgement(advice.technique(), advice.standing(), advice.settings(), voices);
    }
}
