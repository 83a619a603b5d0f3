package org.tunica.couch;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Room;
import org.tunica.casefile.Segment;
import org.tunica.plan.SettingsAdvice;
import org.tunica.session.SessionPlan;
import org.tunica.wording.SettingWords;

/** What a plan intends for one session, in the fields of the form on which is recorded what was done. */
final class Intended {
    private final CaseFile caseFile;
    private final SessionPlan.Session session;

    Intended(SessionPlan plan, SessionPlan.Session session) {
        this.caseFile = plan.caseFile();
        this.session = session;
    }

    static String segment(int at) {
        return "segments[" + at + "]";
    }

    /** Every value intended, by the name of its field. */
    Map<String, String> all() {
        Map<String, String> all = new LinkedHashMap<>();
        for (int at = 0; at < session.steps().size(); at++) {
            String prefix = segment(at) + ".";
            step(session.steps().get(at)).forEach((field, value) -> all.put(prefix + field, value));
        }
        return all;
    }

    /** As a form that somebody has yet to look through. */
    Typed typed() {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        all().forEach((field, value) -> fields.put(field, List.of(value)));
        return new Typed(fields);
    }

    private Map<String, String> step(SessionPlan.Step step) {
        SettingsAdvice settings = step.settings();
        Map<String, String> values = new LinkedHashMap<>();
        values.put("technique", step.technique());
        values.put("position", step.position().word());
        number(values, "treatedLengthCm", lengthCm(step.ref()));
        number(values, "heat.powerW", settings.powerW());
        number(values, "heat.pullbackSecondsPerCm", settings.pullbackSecondsPerCm());
        number(values, "heat.cycles", settings.cycles());
        number(values, "heat.pulsesPerCm", settings.pulsesPerCm());
        number(values, "lesions", settings.lesions());
        if (settings.tumescentMl().isPresent()) {
            number(values, "tumescent.volumeMl", settings.tumescentMl());
            caseFile.room().tumescent().ifPresent(mix -> tumescent(values, mix));
        }
        settings.drug().ifPresent(drug -> values.put("sclerosant.drug", drug));
        number(values, "sclerosant.percent", settings.drugPercent());
        number(values, "sclerosant.liquidMl", settings.drugMl());
        number(values, "sclerosant.foamMl", settings.foamMl());
        return values;
    }

    private static void tumescent(Map<String, String> values, Room.Tumescent mix) {
        number(values, "tumescent.lidocainePercent", mix.lidocainePercent());
        mix.adrenaline().ifPresent(yes -> values.put("tumescent.adrenaline", yes.toString()));
        mix.chilled().ifPresent(yes -> values.put("tumescent.chilled", yes.toString()));
    }

    private OptionalDouble lengthCm(String ref) {
        return caseFile.limbs().stream()
                .flatMap(limb -> limb.segments().stream())
                .filter(segment -> segment.ref().equals(ref))
                .map(Segment::lengthCm)
                .findFirst()
                .orElse(OptionalDouble.empty());
    }

    /** As the plan says it: nobody draws up a foam to the microlitre. */
    private static void number(Map<String, String> values, String field, OptionalDouble value) {
        if (value.isPresent()) {
            values.put(field, SettingWords.plain(value.getAsDouble()));
        }
    }
}
