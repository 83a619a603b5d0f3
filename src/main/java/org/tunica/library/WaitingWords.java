package org.tunica.library;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.tunica.archive.PastCaseDesk;
import org.tunica.casefile.JsonText;
import org.tunica.casefile.Patient;
import org.tunica.casefile.Word;
import org.tunica.pastcases.WaitingCase;

/** A waiting case in words, for the person who looks at it. */
final class WaitingWords {
    private static final String UNKNOWN = "not told";

    private WaitingWords() {}

    static LookPage.Whole of(PastCaseDesk.Waiting waiting) {
        WaitingCase read = waiting.read();
        return new LookPage.Whole(
                read.id(),
                waiting.place().says(),
                told(read),
                read.notes(),
                JsonText.parse("past case", waiting.kept().line().getBytes(StandardCharsets.UTF_8))
                        .toPrettyString(),
                waiting.digest(),
                List.copyOf(ails(read.caseFile().patient())));
    }

    /** What an outsider could know of somebody, and what of it stands here. */
    private static List<String> told(WaitingCase read) {
        Patient patient = read.caseFile().patient();
        List<String> told = new ArrayList<>();
        if (read.invented()) {
            told.add("INVENTED: nobody was ever treated like this");
        }
        told.add("site: " + read.site());
        told.add("year: "
                + (read.year().isPresent() ? Integer.toString(read.year().getAsInt()) : UNKNOWN));
        told.add("age: " + read.ageBandYears().map(band -> band + " years").orElse(UNKNOWN));
        told.add("weight: " + read.weightBandKg().map(band -> band + " kg").orElse(UNKNOWN));
        told.add("sex: " + patient.sex().map(Word::word).orElse(UNKNOWN));
        told.add("conditions: " + listed(patient.conditions()));
        told.add("allergies: " + listed(patient.allergies()));
        read.caseFile()
                .limbs()
                .forEach(limb -> told.add(limb.side().word() + " leg: clinical class "
                        + limb.ceapClass().map(Word::word).orElse(UNKNOWN) + ", "
                        + limb.segments().size() + (limb.segments().size() == 1 ? " segment" : " segments")));
        return told;
    }

    private static String listed(Optional<Set<String>> ids) {
        return ids.map(all -> all.isEmpty() ? "none" : String.join(", ", new TreeSet<>(all)))
                .orElse(UNKNOWN);
    }

    private static Set<String> ails(Patient patient) {
        Set<String> all = new TreeSet<>();
        Stream.of(patient.conditions(), patient.allergies())
                .flatMap(Optional::stream)
                .flatMap(Collection::stream)
                .forEach(all::add);
        return all;
    }
}
