package org.tunica.meeting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.UcumWords;
import org.tunica.plan.Advice;
import org.tunica.plan.SegmentAdvice;
import org.tunica.similar.CaseLibrary;
import org.tunica.similar.PastSigns;
import org.tunica.wording.ReasonWords;
import org.tunica.wording.SegmentWords;
import org.tunica.wording.SettingWords;

/** The signs of a hard case in words: those the rules find in its advice, then those found in past cases. */
final class Signs {
    private final Tunica tunica;
    private final Optional<CaseLibrary> library;

    /** @param library the past cases it may be compared with */
    Signs(Tunica tunica, Optional<CaseLibrary> library) {
        this.tunica = tunica;
        this.library = library;
    }

    /** Each with its segment. */
    List<String> of(CaseFile caseFile, Advice advice) {
        List<String> signs = new ArrayList<>();
        Optional<PastSigns> past = library.map(tunica.likeness()::signs);
        for (SegmentAdvice segment : advice.segments()) {
            String title = SegmentWords.title(segment) + ": ";
            segment.hardCase().forEach(sign -> signs.add(title + ReasonWords.line(sign)));
            past.ifPresent(cases -> cases.of(caseFile, segment).forEach(sign -> signs.add(title + words(sign))));
        }
        return signs;
    }

    /** A sign never stands without the numbers it rests on and how those stand. */
    private static String words(PastSigns.Sign sign) {
        String numbers = sign.limits().stream()
                .map(limit -> limit.id() + " " + SettingWords.plain(limit.value()) + UcumWords.behind(limit.unit())
                        + " (" + limit.provenance().standing().word() + ")")
                .collect(Collectors.joining(", "));
        return (sign.invented() ? "INVENTED past cases: " : "") + sign.title() + ": " + sign.says() + " [" + numbers
                + "]";
    }
}
