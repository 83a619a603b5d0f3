package org.tunica.treatment;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.tunica.casefile.Limb;
import org.tunica.paper.Block;
import org.tunica.paper.Document;
import org.tunica.session.SessionPlan;

/** The parts of a note on the session as a whole. */
final class SessionNote {
    /** Enough of the digest of a release to tell it from another. */
    private static final int DIGEST_SHOWN = 19;

    private final SessionPlan plan;
    private final SessionPlan.Session session;
    private final DeliveredSession delivered;

    SessionNote(SessionPlan plan, SessionPlan.Session session, DeliveredSession delivered) {
        this.plan = plan;
        this.session = session;
        this.delivered = delivered;
    }

    Document.Section section() {
        List<Block.Line> lines = new ArrayList<>();
        lines.add(line("Date", Says.text(delivered.date())));
        lines.add(line("Session", session.number() + " of " + plan.sessions().size() + " planned"));
        lines.add(line("People", people()));
        lines.add(line("Consent", Says.flag(delivered.consent(), "confirmed", "NOT CONFIRMED")));
        lines.add(line("Time-out", Says.flag(delivered.timeOut(), "done", "NOT DONE")));
        lines.add(line("Indication", Says.text(delivered.indication())));
        plan.caseFile().limbs().forEach(limb -> lines.add(leg(limb)));
        lines.add(line(
                "Clinical severity score before",
                delivered.severityPoints().isPresent()
                        ? Rounded.text(delivered.severityPoints().getAsDouble())
                        : Says.NOT_RECORDED));
        lines.add(line("Lidocaine outside the tumescence", other()));
        lines.add(line(
                "Plan",
                plan.release().state().word() + " rules " + plan.release().version() + ", "
                        + shortened(plan.release().digest())));
        return new Document.Section("Session", List.of(new Block.Lines(lines)));
    }

    private static Block.Line leg(Limb limb) {
        return line(
                Says.side(limb.side()) + " leg",
                "CEAP " + Says.word(limb.ceapClass()) + ", deep veins " + Says.word(limb.deepVeins()));
    }

    private static String shortened(String digest) {
        return digest.substring(0, Math.min(DIGEST_SHOWN, digest.length()));
    }

    private String people() {
        return delivered
                .people()
                .filter(people -> !people.isEmpty())
                .map(people -> people.stream()
                        .map(person -> Says.word(person.role()) + " " + person.initials())
                        .collect(Collectors.joining(", ")))
                .orElse(Says.NOT_RECORDED);
    }

    private String other() {
        if (delivered.otherLidocaineMg().isEmpty()) {
            return Says.NOT_RECORDED;
        }
        return Says.number(delivered.otherLidocaineMg(), "mg") + ", "
                + Says.flag(delivered.otherAdrenaline(), "with adrenaline", "without adrenaline")
                        .replace(Says.NOT_RECORDED, "adrenaline not recorded");
    }

    static Document.Section after(DeliveredSession.Aftercare aftercare) {
        return new Document.Section(
                "Afterwards",
                List.of(new Block.Lines(List.of(
                        line("Compression", Says.text(aftercare.compression())),
                        line("Prophylaxis against thrombosis", Says.text(aftercare.prophylaxis())),
                        line("Advice for the way home", Says.flag(aftercare.adviceGiven(), "given", "NOT GIVEN")),
                        line("Follow-up planned", Says.text(aftercare.followUp()))))));
    }

    private static Block.Line line(String label, String text) {
        return new Block.Line(label, text);
    }
}
