package org.tunica;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.tunica.casefile.CaseFile;
import org.tunica.knowledge.Knowledge;
import org.tunica.paper.Document;
import org.tunica.plan.Advice;
import org.tunica.session.SessionPlan;
import org.tunica.sheet.PatientSheet;
import org.tunica.treatment.DeliveredSession;
import org.tunica.treatment.FollowUp;
import org.tunica.treatment.NoteWriter;
import org.tunica.treatment.ProcedureNote;
import org.tunica.treatment.TreatedPlan;
import org.tunica.treatment.Treatment;

/** Everything a user can ask about what was done, how it went, and what a patient reads before. Immutable. */
public final class Treatments {
    private final Knowledge knowledge;
    private final NoteWriter notes;
    private final PatientSheet sheets;
    private final Function<CaseFile, Advice> advice;
    private final Asked asked;

    Treatments(Knowledge knowledge, NoteWriter notes, PatientSheet sheets, Function<CaseFile, Advice> advice) {
        this.knowledge = knowledge;
        this.notes = notes;
        this.sheets = sheets;
        this.advice = advice;
        this.asked = new Asked(knowledge);
    }

    /**
     * Reads the record of a delivered session.
     *
     * @param what the name of the input, for messages
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path, and both numbers of a contradiction
     */
    public DeliveredSession readDelivered(String what, byte[] json) {
        return DeliveredSession.read(what, json, knowledge);
    }

    /**
     * The procedure note of a delivered session.
     *
     * @throws org.tunica.casefile.FaultyInput when plan and record do not belong together
     */
    public ProcedureNote note(SessionPlan plan, DeliveredSession delivered) {
        return notes.write(plan, delivered);
    }

    /**
     * Reads from a plan what was to be treated where.
     *
     * @param what the name of the input, for messages
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path
     */
    public TreatedPlan readTreated(String what, byte[] json) {
        return TreatedPlan.read(what, json, knowledge);
    }

    /**
     * Reads a follow-up, {@code tunica-followup/1}.
     *
     * @param what the name of the input, for messages
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path
     */
    public FollowUp readFollowUp(String what, byte[] json) {
        return FollowUp.read(what, json, knowledge);
    }

    /**
     * What was done and how it went.
     *
     * @param delivered records of the sessions; without any, what was planned counts as done
     * @throws org.tunica.casefile.FaultyInput with every way in which they do not belong together
     */
    public Treatment treatment(TreatedPlan planned, List<DeliveredSession> delivered, FollowUp followUp) {
        return Treatment.of(planned, delivered, followUp, knowledge);
    }

    /**
     * A sheet for the patient: the options that can be talked about or, where a technique was chosen, that one alone.
     *
     * @param chosen id of the technique chosen, by segment; it goes before what the case says
     * @throws org.tunica.casefile.FaultyInput for an unknown segment or technique, or when a rule excludes what is chosen
     */
    public Document sheet(CaseFile caseFile, Map<String, String> chosen) {
        chosen.forEach((ref, technique) -> {
            asked.segment(caseFile, ref);
            asked.technique(technique);
        });
        return sheets.of(caseFile, advice.apply(caseFile), chosen);
    }
}
