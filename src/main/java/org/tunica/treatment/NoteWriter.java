package org.tunica.treatment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Faults;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Nearest;
import org.tunica.knowledge.Knowledge;
import org.tunica.paper.Block;
import org.tunica.paper.Document;
import org.tunica.physics.HeatGiven;
import org.tunica.plan.Advice;
import org.tunica.session.SessionPlan;

/**
 * Writes the procedure note of a session: what was delivered, held against the plan, with the fields of the reporting
 * standards (S-0090, S-0091, from memory, unverified) and what the heat model says of the heat really given.
 */
public final class NoteWriter {
    private static final String STANDING =
            "What the heat model says is computed, not seen: indices for a physician, not validated on patients. Nerve and"
                    + " skin are taken as near as they were before tumescence. A scan at follow-up decides.";

    private final Knowledge knowledge;
    private final HeatNote heat;
    private final Attention attention;

    /** A writer over the knowledge and the heat model of one release. */
    public NoteWriter(Knowledge knowledge, HeatGiven heat) {
        this.knowledge = knowledge;
        this.heat = new HeatNote(knowledge, heat, DeliveredLimits.of(knowledge));
        this.attention = new Attention(FollowUpLimits.of(knowledge));
    }

    /**
     * The note of one session.
     *
     * @throws org.tunica.casefile.FaultyInput when plan and record do not belong together
     */
    public ProcedureNote write(SessionPlan plan, DeliveredSession delivered) {
        SessionPlan.Session session = session(plan, delivered);
        List<SegmentFacts> segments = segments(plan.caseFile(), session, delivered);
        List<Document.Section> parts = new ArrayList<>();
        List<ProcedureNote.HeatedStretch> all = new ArrayList<>();
        for (SegmentFacts facts : segments) {
            List<ProcedureNote.HeatedStretch> stretches = heat.stretches(plan.caseFile(), facts);
            parts.add(new SegmentNote(knowledge, facts, stretches).section());
            all.addAll(stretches);
        }
        DoseNote doses =
                new DoseNote(knowledge, delivered, plan.caseFile().patient().weightKg());
        List<Document.Section> sections = new ArrayList<>();
        sections.add(new SessionNote(plan, session, delivered).section());
        sections.add(new Document.Section(
                "What to look at", attention.blocks(session, delivered, segments, all, doses.warnings())));
        sections.addAll(parts);
        sections.add(new Document.Section("Drugs and fluids of the session", doses.blocks()));
        sections.add(SessionNote.after(delivered.aftercare()));
        sections.add(new Document.Section("How to read this", List.of(new Block.Paragraph(STANDING))));
        return new ProcedureNote(plan.caseRef(), page(plan, sections), all);
    }

    private static Document page(SessionPlan plan, List<Document.Section> sections) {
        String mark = plan.release().mark();
        return new Document("en", "Procedure note", "case " + plan.caseRef(), mark, List.of(Advice.CAUTION), sections);
    }

    private static SessionPlan.Session session(SessionPlan plan, DeliveredSession delivered) {
        Faults faults = new Faults();
        if (!plan.caseRef().equals(delivered.caseRef())) {
            faults.add(
                    "$.caseRef",
                    "is \"" + delivered.caseRef() + "\", the plan is of the case \"" + plan.caseRef() + "\"");
        }
        List<SessionPlan.Session> sessions = plan.sessions();
        Optional<SessionPlan.Session> held = sessions.stream()
                .filter(session -> delivered.session().isEmpty()
                        ? sessions.size() == 1
                        : session.number() == delivered.session().getAsInt())
                .findFirst();
        if (held.isEmpty()) {
            faults.add(
                    "$.session",
                    delivered.session().isEmpty()
                            ? "must be given: the plan has " + sessions.size() + " sessions"
                            : "is " + delivered.session().getAsInt() + ", the plan has " + sessions.size()
                                    + (sessions.size() == 1 ? " session" : " sessions"));
        }
        faults.throwIfAny("delivered");
        return held.orElseThrow();
    }

    private static List<SegmentFacts> segments(
            CaseFile caseFile, SessionPlan.Session session, DeliveredSession delivered) {
        Faults faults = new Faults();
        List<SegmentFacts> segments = new ArrayList<>();
        for (int i = 0; i < delivered.segments().size(); i++) {
            DeliveredSegment one = delivered.segments().get(i);
            Optional<SegmentFacts> facts = SegmentFacts.of(caseFile, session, one);
            if (facts.isEmpty()) {
                Set<String> refs = refs(caseFile);
                faults.add(
                        "$.segments[" + i + "].ref",
                        "\"" + one.ref() + "\" is no segment of the case, only " + String.join(", ", refs)
                                + Nearest.hint(one.ref(), refs));
            }
            facts.ifPresent(segments::add);
        }
        faults.throwIfAny("delivered");
        return segments;
    }

    private static Set<String> refs(CaseFile caseFile) {
        return caseFile.limbs().stream()
                .map(Limb::segments)
                .flatMap(List::stream)
                .map(segment -> segment.ref())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
