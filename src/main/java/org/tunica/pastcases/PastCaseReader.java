package org.tunica.pastcases;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import org.tunica.knowledge.Knowledge;
import org.tunica.treatment.DeliveredSession;
import org.tunica.treatment.FollowUp;

/** Reads a past case back and refuses whatever could name someone. */
public final class PastCaseReader {
    private static final Pattern ID = Pattern.compile(PastCase.ID);
    private static final Pattern SITE = Pattern.compile(PastCase.SITE);

    private final Knowledge knowledge;
    private final NoteScrubber scrubber;

    /** A reader that knows the words and ranges of a release. */
    public PastCaseReader(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.scrubber = new NoteScrubber(knowledge);
    }

    /**
     * Reads one past case.
     *
     * @param what the name of the input, for messages, such as "base.jsonl, line 7"
     * @param bytes one JSON object, UTF-8
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path
     */
    public PastCase read(String what, byte[] bytes) {
        return read(what, bytes, PastCase.FORMAT).released();
    }

    /**
     * Reads the case of a past case alone: what was done and how it went is neither read nor checked again.
     *
     * @param what the name of the input, for messages
     * @param bytes one JSON object, UTF-8
     * @throws org.tunica.casefile.FaultyInput with every fault of the case and its JSON path
     */
    public CaseFile readCase(String what, byte[] bytes) {
        try {
            Faults faults = new Faults();
            FieldReader root = new FieldReader(JsonText.parse(what, bytes), "$", faults);
            faults.throwIfAny(what);
            format(root, PastCase.FORMAT);
            String id = id(root);
            CaseFile read = caseFile(root, faults);
            faults.throwIfAny(what);
            PastCaseChecks.check(read, id, faults);
            faults.throwIfAny(what);
            return read;
        } catch (FaultyInput e) {
            throw Discreet.of(e);
        }
    }

    /**
     * Reads one case that waits for its release; the same must not stand in it.
     *
     * @param what the name of the input, for messages
     * @param bytes one JSON object, UTF-8
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path
     */
    public WaitingCase readWaiting(String what, byte[] bytes) {
        return read(what, bytes, WaitingCase.FORMAT);
    }

    private WaitingCase read(String what, byte[] bytes, String format) {
        try {
            return strictly(what, bytes, format);
        } catch (FaultyInput e) {
            throw Discreet.of(e);
        }
    }

    private WaitingCase strictly(String what, byte[] bytes, String format) {
        Faults faults = new Faults();
        FieldReader root = new FieldReader(JsonText.parse(what, bytes), "$", faults);
        faults.throwIfAny(what);
        WaitingCase read = anonymous(root, format, faults);
        root.done();
        faults.throwIfAny(what);
        PastCaseChecks.check(read, scrubber, faults);
        faults.throwIfAny(what);
        return read;
    }

    private WaitingCase anonymous(FieldReader root, String format, Faults faults) {
        format(root, format);
        return new WaitingCase(
                WaitingCase.FORMAT,
                id(root),
                root.required("invented", root.flag("invented")).orElse(false),
                matching(root, "site", SITE, "must be \"site-\" and up to 16 letters and digits, a pseudonym"),
                PastCaseChecks.year(root),
                band(root, "ageBandYears"),
                band(root, "weightBandKg"),
                caseFile(root, faults),
                delivered(root),
                FollowUp.read(part(root, "followUp", faults), faults, knowledge),
                root.texts("notes"));
    }

    private static String id(FieldReader root) {
        return matching(root, "id", ID, "must be \"p-\" and 24 of 0 to 9 and a to f; nothing that leads to a person");
    }

    private CaseFile caseFile(FieldReader root, Faults faults) {
        return CaseFile.read(part(root, "caseFile", faults), faults, knowledge);
    }

    private static void format(FieldReader root, String wanted) {
        String format = root.requiredText("format");
        if (!format.isEmpty() && !format.equals(wanted)) {
            root.fault("format", "must be \"" + wanted + "\"");
        }
    }

    private static String matching(FieldReader root, String field, Pattern pattern, String says) {
        String text = root.requiredText(field);
        if (!text.isEmpty() && !pattern.matcher(text).matches()) {
            root.fault(field, says);
        }
        return text;
    }

    private static Optional<Band> band(FieldReader root, String field) {
        Optional<String> text = root.text(field);
        Optional<Band> band = text.flatMap(Band::read);
        if (text.isPresent() && band.isEmpty()) {
            root.fault(field, "must be a band such as 60-69, under-40 or 90-or-more");
        }
        return band;
    }

    private static FieldReader part(FieldReader root, String field, Faults faults) {
        return root.required(field, root.object(field)).orElseGet(() -> FieldReader.ofUnreadable("$." + field, faults));
    }

    private List<DeliveredSession> delivered(FieldReader root) {
        return root.required("delivered", root.objects("delivered")).orElse(List.of()).stream()
                .map(reader -> DeliveredSession.read(reader, knowledge))
                .toList();
    }
}
