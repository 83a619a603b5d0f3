package org.tunica.pastcases;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tunica.casefile.Ceap;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Patient;
import org.tunica.casefile.Word;

/**
 * What somebody outside could know of the person of a past case, or find out: age, sex, weight, year, clinic, how the leg
 * looks, and what else ails the person.
 *
 * @param invented whether nobody was; an invented case hides no real one
 * @param told age, sex, weight, year, site and class of the leg, in this order
 * @param ails conditions, allergies, pregnancy
 */
record Profile(boolean invented, List<String> told, Set<String> ails) {
    /** The things told, by name. */
    static final List<String> NAMES = List.of("age", "sex", "weight", "year", "site", "leg");

    private static final Map<String, String> UNITS = Map.of("age", " years", "weight", " kg");

    static final String UNKNOWN = "not told";

    static Profile of(Anonymous one) {
        Patient patient = one.caseFile().patient();
        return new Profile(
                one.invented(),
                List.of(
                        word(one.ageBandYears()),
                        patient.sex().map(Word::word).orElse(UNKNOWN),
                        word(one.weightBandKg()),
                        one.year().isPresent() ? Integer.toString(one.year().getAsInt()) : UNKNOWN,
                        one.site(),
                        leg(one)),
                ails(patient));
    }

    private static String word(Optional<Band> band) {
        return band.map(Band::toString).orElse(UNKNOWN);
    }

    /** The graver leg: nobody looks at a varicose vein twice, everybody at an ulcer. */
    private static String leg(Anonymous one) {
        Stream<Limb.CeapClass> mapped = one.caseFile().limbs().stream().flatMap(limb -> limb.ceapClass().stream());
        Stream<Limb.CeapClass> followed = one.followUp().limbs().stream()
                .flatMap(limb -> limb.ceapBefore().stream())
                .map(Ceap::highest);
        return Stream.concat(mapped, followed)
                .max(Comparator.naturalOrder())
                .map(Profile::group)
                .orElse(UNKNOWN);
    }

    private static String group(Limb.CeapClass ceapClass) {
        return switch (ceapClass) {
            case C0, C1 -> "C0 to C1";
            case C2, C2R, C3 -> "C2 to C3";
            case C4A, C4B, C4C -> "C4";
            case C5, C6, C6R -> "C5 to C6";
        };
    }

    private static Set<String> ails(Patient patient) {
        Set<String> ails = new TreeSet<>(patient.conditions().orElse(Set.of()));
        patient.allergies().orElse(Set.of()).forEach(allergy -> ails.add("allergy to " + allergy));
        if (patient.pregnant().orElse(false)) {
            ails.add("pregnant");
        }
        if (patient.breastfeeding().orElse(false)) {
            ails.add("breastfeeding");
        }
        return ails;
    }

    /** What is told, in words. */
    List<String> words() {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < NAMES.size(); i++) {
            String name = NAMES.get(i);
            boolean known = !told.get(i).equals(UNKNOWN);
            words.add(name + " " + told.get(i) + (known ? UNITS.getOrDefault(name, "") : ""));
        }
        return words;
    }

    /** The values of the ladders: what is told, and which of a set of rare things the person has. */
    List<String> known(Set<String> rare) {
        List<String> known = new ArrayList<>(told);
        known.add(ails.stream().filter(rare::contains).collect(Collectors.joining(" + ")));
        return known;
    }
}
