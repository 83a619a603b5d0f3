package org.tunica.couch;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.CodeFile;
import org.tunica.knowledge.Knowledge;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.SegmentAdvice;
import org.tunica.store.DocumentKind;
import org.tunica.store.KeptDocument;
import org.tunica.store.Store;

/** The choices that can be made on an advice page, and what was chosen before. */
final class ChoiceForms {
    private final Store store;
    private final Knowledge knowledge;
    private final List<CodeFile.OverrideReason> reasons;

    ChoiceForms(Store store, Knowledge knowledge) {
        this.store = store;
        this.knowledge = knowledge;
        this.reasons = knowledge.codes().overrideReasons();
    }

    List<CodeFile.OverrideReason> reasons() {
        return reasons;
    }

    static List<OptionAdvice> ranked(SegmentAdvice segment) {
        return segment.options().stream()
                .filter(option -> option.standing().ranked())
                .toList();
    }

    /** One for each segment with something to choose from, by its name. */
    Map<String, ChoiceForm> of(String caseRef, AdviceShelf.Shown shown) {
        Map<String, ChoiceForm> forms = new HashMap<>();
        List<SegmentAdvice> segments =
                shown.soFar().map(soFar -> soFar.advice().segments()).orElse(List.of());
        for (SegmentAdvice segment : segments) {
            List<String> told = told(caseRef, shown, segment.ref());
            List<OptionAdvice> ranked = shown.isWhole() ? ranked(segment) : List.of();
            if (!ranked.isEmpty() || !told.isEmpty()) {
                forms.put(
                        segment.ref(),
                        ChoiceForm.of(segment.ref(), ranked, reasons, told, ChoiceForm.Sent.NOTHING, List.of()));
            }
        }
        return forms;
    }

    /** What was chosen last for a segment, and what the case says where that is something else. */
    List<String> told(String caseRef, AdviceShelf.Shown shown, String ref) {
        Optional<KeptDocument> last = store.documents().of(caseRef, DocumentKind.CHOICE).stream()
                .filter(kept -> Choice.read(kept.document().body()).segment().equals(ref))
                .reduce((earlier, later) -> later);
        return told(last, segment(shown, ref));
    }

    private static Segment segment(AdviceShelf.Shown shown, String ref) {
        return shown.caseFile().limbs().stream()
                .flatMap(limb -> limb.segments().stream())
                .filter(segment -> segment.ref().equals(ref))
                .findFirst()
                .orElseThrow();
    }

    private List<String> told(Optional<KeptDocument> last, Segment segment) {
        List<String> told = new ArrayList<>();
        Optional<Choice> choice = last.map(kept -> Choice.read(kept.document().body()));
        last.ifPresent(kept -> told.add(sentence(choice.orElseThrow(), kept)));
        if (!segment.chosen().equals(choice.flatMap(Choice::technique))) {
            told.add("The case says: chosen is "
                    + segment.chosen().map(id -> knowledge.technique(id).says()).orElse("nothing")
                    + ".");
        }
        return told;
    }

    private static String sentence(Choice choice, KeptDocument kept) {
        String why = choice.why().isEmpty() ? "" : " Reason: " + choice.why() + ".";
        return "Chosen: " + choice.says() + ", by " + kept.stamp().by() + " at "
                + kept.stamp().at().truncatedTo(ChronoUnit.SECONDS) + " on version "
                + kept.document().caseVersion() + " under rules "
                + kept.document().origin().releaseVersion() + "." + why;
    }
}
