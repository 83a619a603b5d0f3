package org.tunica.fhir;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tunica.casefile.Faults;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Nearest;
import org.tunica.casefile.Patient;
import org.tunica.casefile.Segment;
import org.tunica.casefile.Word;
import org.tunica.knowledge.CodeFile;
import org.tunica.knowledge.Knowledge;

/** What a code means in words of a case, and which code a word has. Immutable. */
final class Codes {
    /** How the identity of each of our own code systems starts; the kind of word follows. */
    static final String OWN = "urn:tunica:";

    static final String MEASURE = "measure";
    static final String VEIN = "vein";
    static final String LEVEL = "level";
    static final String SIDE = "side";
    static final String CONDITION = "condition";
    static final String ALLERGY = "allergy";
    static final String TECHNIQUE = "technique";
    static final String ORDER = "order";

    /** A history that says there is nothing of our words, and an entry that is none of them. */
    static final String NONE = "none";

    static final String OTHER = "other";

    private final Map<String, Set<String>> words;
    private final Map<Coding, Map<String, String>> meanings = new LinkedHashMap<>();
    private final Map<String, String> switchedOff = new HashMap<>();

    private Codes(Map<String, Set<String>> words) {
        this.words = words;
    }

    /** A code and the system it belongs to. */
    record Coding(String system, String code) {
        @Override
        public String toString() {
            return system + "|" + code;
        }
    }

    /** The codes of a file; what is wrong with it is noted. */
    static Codes of(CodeFile file, Knowledge knowledge, Faults faults) {
        Codes codes = new Codes(words(knowledge));
        codes.words.forEach((kind, all) -> all.forEach(word -> codes.put(new Coding(OWN + kind, word), kind, word)));
        file.systems().forEach((name, system) -> {
            if (!system.on()) {
                codes.switchedOff.put(system.uri(), name);
            }
        });
        file.aliases().forEach(alias -> codes.alias(alias, file, faults));
        return codes;
    }

    private void alias(CodeFile.Alias alias, CodeFile file, Faults faults) {
        CodeFile.CodeSystem system = file.systems().get(alias.system());
        Set<String> known = words.get(alias.kind());
        if (system == null) {
            faults.add(
                    alias.place(),
                    "no code system of that name"
                            + Nearest.hint(alias.system(), file.systems().keySet()));
        } else if (known == null) {
            faults.add(alias.place(), "there is no kind " + alias.kind() + Nearest.hint(alias.kind(), words.keySet()));
        } else if (!known.contains(alias.word())) {
            faults.add(
                    alias.place(),
                    "there is no " + alias.kind() + " " + alias.word() + Nearest.hint(alias.word(), known));
        } else if (system.on()) {
            Coding coding = new Coding(system.uri(), alias.code());
            String other = put(coding, alias.kind(), alias.word());
            if (!other.equals(alias.word())) {
                faults.add(alias.place(), coding + " means the " + alias.kind() + " " + other + " already");
            }
        }
    }

    /** Gives a code its meaning unless it has one of that kind; the meaning it has. */
    private String put(Coding coding, String kind, String word) {
        String there = meanings.computeIfAbsent(coding, any -> new HashMap<>()).putIfAbsent(kind, word);
        return there == null ? word : there;
    }

    /** The word of a kind that a code means. */
    Optional<String> word(String kind, Coding coding) {
        return Optional.ofNullable(meanings.getOrDefault(coding, Map.of()).get(kind));
    }

    /** Why a code means nothing here. */
    String unknown(Coding coding) {
        String name = switchedOff.get(coding.system());
        return name == null
                ? "the code " + coding + " is not in the code map"
                : "the code " + coding + " belongs to " + name + ", which is switched off in the code map";
    }

    /** Every kind with its words, in the order in which they are declared. */
    Map<String, Set<String>> words() {
        return words;
    }

    /** Every code that means a word, ours first, then as the files have them. */
    List<Coding> codings(String kind, String word) {
        return meanings.entrySet().stream()
                .filter(entry -> word.equals(entry.getValue().get(kind)))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The codes to write for a word: ours, and of each other system the first that says no more than the word. */
    List<Coding> outward(String kind, String word) {
        Map<String, Coding> bySystem = new LinkedHashMap<>();
        codings(kind, word).stream()
                .filter(coding -> meanings.getOrDefault(coding, Map.of()).size() == 1)
                .forEach(coding -> bySystem.putIfAbsent(coding.system(), coding));
        return List.copyOf(bySystem.values());
    }

    private static Map<String, Set<String>> words(Knowledge knowledge) {
        Map<String, Set<String>> all = new LinkedHashMap<>();
        all.put(MEASURE, of(Measure.class));
        all.put(SIDE, of(Limb.Side.class));
        all.put(VEIN, of(Segment.Vein.class));
        all.put(LEVEL, of(Segment.Level.class));
        all.put(Measure.POSTURE.word(), of(Segment.Measured.Posture.class));
        all.put(Measure.NERVE.word(), of(Segment.Nerve.Name.class));
        all.put(Measure.COURSE.word(), of(Segment.Course.class));
        all.put(Measure.THROMBUS.word(), of(Segment.Thrombus.class));
        all.put(Measure.EARLIER_TREATMENT.word(), of(Segment.EarlierTreatment.class));
        all.put(Measure.CEAP_CLASS.word(), of(Limb.CeapClass.class));
        all.put(Measure.DEEP_VEINS.word(), of(Limb.DeepVeins.class));
        all.put(Measure.SEX.word(), of(Patient.Sex.class));
        all.put(Measure.ANTICOAGULATION.word(), of(Patient.Anticoagulation.class));
        all.put(Measure.MOBILITY.word(), of(Patient.Mobility.class));
        all.put(CONDITION, history(knowledge.conditionIds()));
        all.put(ALLERGY, history(knowledge.allergyIds()));
        all.put(TECHNIQUE, new LinkedHashSet<>(knowledge.techniqueIds()));
        all.put(ORDER, new LinkedHashSet<>(List.of("close-vein", "duplex-scan")));
        return all;
    }

    private static Set<String> history(Collection<String> ids) {
        Set<String> words = new LinkedHashSet<>(ids);
        words.add(NONE);
        words.add(OTHER);
        return words;
    }

    private static <E extends Enum<E> & Word> Set<String> of(Class<E> type) {
        Set<String> words = new LinkedHashSet<>();
        Arrays.stream(type.getEnumConstants()).map(Word::word).forEach(words::add);
        return words;
    }
}
