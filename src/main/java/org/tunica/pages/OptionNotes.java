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

/** The help to the numbers of one option: its settings, its amounts, and what the models foresee. */
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

    static List<NumberNote> of(OptionAdvice option, Knowledge knowledge) {
        List<NumberNote> notes = new ArrayList<>();
        if (option.firstPlaceShare().isPresent()) {
            notes.add(NumberNote.computed(
                    "first in a share of draws",
                    "how often this option leads when measurements, rates and weights are drawn anew within what is not"
                            + " known of them; a ranking that is not firm is a matter of judgement",
                    "stochastic acceptability analysis over 64 draws of measurements and 10,000 of weights and rates"));
        }
        if (option.predicted().heat().isPresent()) {
            notes.add(NumberNote.computed(
                    "proposed setting, chance of death, chance of char, warmth of nerve and skin",
                    "an index for a physician, not validated on patients: what the heat model foresees over draws of its"
                            + " constants and of the measurements",
                    "the heat model with its constants as knowledge/tissue.yaml and heat-devices.yaml name them, and the"
                            + " limits below"));
            notes.addAll(NumberNote.of(HEAT_LIMITS, knowledge));
        } else if (option.predicted().wallFractionKilled().isPresent()) {
            notes.add(NumberNote.computed(
                    "share of the wall reached",
                    "how deep the technique is taken to act, against the wall it meets",
                    "the model of its family; " + option.predicted().says()));
        }
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
