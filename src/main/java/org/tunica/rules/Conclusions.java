package org.tunica.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tunica.casefile.Nearest;
import org.tunica.knowledge.Glossary;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;

/** The closed sentences after "then". */
final class Conclusions {
    private static final String FIND = "find ";
    private static final String SET = "set ";
    private static final String KEEP = "keep ";

    private final Sentences sentences;
    private final Map<String, Conclusion> plain = new HashMap<>();
    private final Map<String, Glossary.SettingName> settings = new HashMap<>();

    Conclusions(Knowledge knowledge, Sentences sentences) {
        this.sentences = sentences;
        knowledge.glossary().settings().values().forEach(setting -> settings.put(setting.name(), setting));
        plainly(
                Conclusion.Kind.EXCLUDE,
                Conclusion.Kind.MEASURE_FIRST,
                Conclusion.Kind.NOT_IN_ROOM,
                Conclusion.Kind.MEET);
        for (Conclusion.Strength strength : Conclusion.Strength.values()) {
            learn(new Conclusion.Weighed(Conclusion.Kind.PREFER, strength));
            if (strength != Conclusion.Strength.FIRST_CHOICE) {
                learn(new Conclusion.Weighed(Conclusion.Kind.DISFAVOUR, strength));
                learn(new Conclusion.Weighed(Conclusion.Kind.CAUTION, strength));
            }
        }
    }

    private void plainly(Conclusion.Kind... kinds) {
        for (Conclusion.Kind kind : kinds) {
            learn(new Conclusion.Plainly(kind));
        }
    }

    private void learn(Conclusion conclusion) {
        plain.put(conclusion.sentence(), conclusion);
    }

    /**
     * The conclusion a sentence means.
     *
     * @throws SentenceFault when it fits no form
     */
    Conclusion conclusion(String sentence) throws SentenceFault {
        Conclusion known = plain.get(sentence);
        if (known != null) {
            return known;
        }
        if (sentence.startsWith(FIND)) {
            return new Conclusion.Find(sentences.finding(sentence.substring(FIND.length())));
        }
        if (sentence.startsWith(SET)) {
            return set(sentence);
        }
        if (sentence.startsWith(KEEP)) {
            return keep(sentence);
        }
        throw new SentenceFault(
                "no conclusion fits \"" + sentence + "\"; expected one of: " + String.join(", ", forms()));
    }

    private Conclusion set(String sentence) throws SentenceFault {
        String[] parts = sentence.substring(SET.length()).split(" to ", -1);
        if (parts.length != 2) {
            throw new SentenceFault("expected \"set <setting> to limit <id>\"");
        }
        Glossary.SettingName setting = setting(parts[0]);
        return new Conclusion.SetTo(
                setting.id(), setting.name(), sentences.limit(parts[1], Optional.of(setting.unit())));
    }

    private Conclusion keep(String sentence) throws SentenceFault {
        String rest = sentence.substring(KEEP.length());
        String name = settings.keySet().stream()
                .filter(words -> rest.startsWith(words + " between "))
                .findFirst()
                .orElseThrow(() -> new SentenceFault(
                        "expected \"keep <setting> between limit <id> and limit <id>\" with a known setting"));
        String[] ends = rest.substring(name.length() + " between ".length()).split(" and ", -1);
        if (ends.length != 2) {
            throw new SentenceFault("expected \"keep <setting> between limit <id> and limit <id>\"");
        }
        Glossary.SettingName setting = setting(name);
        Optional<String> unit = Optional.of(setting.unit());
        Quantity low = sentences.limit(ends[0], unit);
        Quantity high = sentences.limit(ends[1], unit);
        if (low.value() > high.value()) {
            throw new SentenceFault("limit " + low.id() + " is above limit " + high.id() + ": nothing lies between");
        }
        return new Conclusion.Keep(setting.id(), name, low, high);
    }

    private Glossary.SettingName setting(String name) throws SentenceFault {
        Glossary.SettingName setting = settings.get(name);
        if (setting == null) {
            throw new SentenceFault("there is no setting \"" + name + "\"" + Nearest.hint(name, settings.keySet()));
        }
        return setting;
    }

    /** Every form with a place-holder where an id goes. */
    List<String> forms() {
        List<String> forms = new ArrayList<>(plain.keySet());
        forms.add("find <finding>");
        forms.add("set <setting> to limit <id>");
        forms.add("keep <setting> between limit <id> and limit <id>");
        forms.sort(null);
        return forms;
    }
}
