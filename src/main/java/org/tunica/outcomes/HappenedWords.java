package org.tunica.outcomes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tunica.statistics.SurvivalAt;

/** What happened to a group of past segments in few sentences. */
final class HappenedWords {
    private final OutcomeNumbers numbers;

    HappenedWords(OutcomeNumbers numbers) {
        this.numbers = numbers;
    }

    List<String> of(WhatHappened happened) {
        List<String> words = new ArrayList<>();
        String counted = happened.segments().isPresent()
                ? "the " + happened.segments().getAsInt() + " nearest"
                : "at most " + numbers.nearest() + " of the nearest";
        words.add((happened.invented() ? "INVENTED. " : "") + "What happened to " + counted
                + " at one year, each counted alike. " + Cautions.NOT_BY_LOT);
        happened.techniques().forEach(one -> words.add(technique(one)));
        OutcomeBlocks.notTold(happened.notTold()).forEach(one -> words.add(one + "."));
        return words;
    }

    private String technique(TechniqueOutcome one) {
        Counted closed =
                one.closed().get(numbers.horizons().indexOf(numbers.year())).closed();
        String limits = closed.share().isPresent() ? ", " + Said.share(closed) + " (" + Said.limits(closed) + ")" : "";
        return OutcomeBlocks.heading(one) + ": closed " + Said.counted(closed) + limits
                + stayed(one).map(share -> "; stayed closed " + share).orElse("") + ".";
    }

    private Optional<String> stayed(TechniqueOutcome one) {
        return one.staying().stream()
                .flatMap(staying -> staying.at().stream())
                .filter(at -> at.daysAfter() == numbers.year().daysAfter())
                .map(SurvivalAt::free)
                .map(free -> Said.percent(free.freeShare()))
                .findFirst();
    }
}
