package org.tunica.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.UcumWords;
import org.tunica.knowledge.Knowledge;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.SettingAdvice;
import org.tunica.wording.SettingWords;

/** The help to the numbers of options: once for a segment what the models foresee, for each option its settings and amounts. */
final class OptionNotes {
    private static final String DAY_LIMIT = "dose.polidocanol.day";
    private static final List<String> HEAT_LIMITS = List.of(
            "heat.setting.kill-probability",
            "heat.setting.char-probability",
            "heat.nerve.peak.red",
            "heat.nerve.dose.red",
            "heat.skin.peak.red",
            "heat.skin.dose.red");

    private OptionNotes() {}

    /** How what is computed for the options of a segment comes about. */
    static List<NumberNote> ofAll(List<OptionAdvice> ranked, Knowledge knowledge) {
        List<NumberNote> notes = new ArrayList<>();
        if (ranked.stream().anyMatch(option -> option.firstPlaceShare().isPresent())) {
            notes.add(NumberNote.computed(
                    "first in a share of draws",
                    "how often an option leads when measurements, rates and weights are drawn anew within what is not"
                            + " known of them; a ranking that is not firm is a matter of judgement",
                    "stochastic acceptability analysis over draws of measurements, weights and rates"));
        }
        if (ranked.stream().anyMatch(option -> option.predicted().heat().isPresent())) {
            notes.add(NumberNote.computed(
                    "proposed setting, chance of death, chance of char, warmth of nerve and skin",
                    "an index for a physician, not validated on patients: what the heat model foresees over draws of its"
                            + " constants and of the measurements",
                    "the heat model with its constants as knowledge/tissue.yaml and heat-devices.yaml name them, and the"
                            + " limits below"));
            notes.addAll(NumberNote.of(HEAT_LIMITS, knowledge));
        }
        if (ranked.stream().anyMatch(OptionNotes::reachAlone)) {
            notes.add(NumberNote.computed(
                    "share of the wall reached",
                    "how deep drug or focus is taken to act, against the wall it meets; no chance is computed",
                    "the model of the family of techniques"));
        }
        return notes;
    }

    private static boolean reachAlone(OptionAdvice option) {
        return option.predicted().heat().isEmpty()
                && option.predicted().wallFractionKilled().isPresent();
    }

    /** Where the settings and amounts of one option come from. */
    static List<NumberNote> of(OptionAdvice option, Knowledge knowledge) {
        List<NumberNote> notes = new ArrayList<>();
        option.settings().ranges().forEach(range -> notes.add(setting(range, knowledge)));
        if (option.settings().sclerosantMgPerKg().isPresent()
                && option.settings().drug().equals(Optional.of("polidocanol"))) {
            notes.addAll(NumberNote.of(List.of(DAY_LIMIT), knowledge));
        }
        return notes;
    }

    private static NumberNote setting(SettingAdvice setting, Knowledge knowledge) {
        return new NumberNote(
                setting.name(),
                value(setting),
                setting.rule().map(rule -> "set by the rule " + rule).orElse("customary range of the technique"),
                NumberNote.source(setting.source(), knowledge),
                NumberNote.words(setting.standing()));
    }

    private static String value(SettingAdvice setting) {
        String unit = UcumWords.behind(setting.unit());
        List<String> parts = new ArrayList<>();
        part(parts, "", setting.value());
        part(parts, "from ", setting.low());
        part(parts, "usually ", setting.typical());
        part(parts, "up to ", setting.high());
        return String.join(", ", parts) + unit;
    }

    private static void part(List<String> parts, String before, OptionalDouble value) {
        value.ifPresent(number -> parts.add(before + SettingWords.plain(number)));
    }
}
