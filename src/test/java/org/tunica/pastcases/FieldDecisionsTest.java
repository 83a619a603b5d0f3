package org.tunica.pastcases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Faults;
import org.tunica.knowledge.FieldDecision;
import org.tunica.knowledge.Knowledge;
import org.tunica.treatment.DeliveredSession;
import org.tunica.treatment.FollowUp;

/** Every field there is has a decision, and the anonymiser does what was decided. */
class FieldDecisionsTest {
    private static final Knowledge KNOWLEDGE = Tunica.shipped().knowledge();
    private static final String ID = "p-0123456789abcdef01234567";

    @Test
    void everyFieldThereIs_hasADecision_andNoOther() {
        Set<String> fields = new TreeSet<>();
        RecordWalk.reachable(CaseFile.class, DeliveredSession.class, FollowUp.class)
                .forEach(record -> {
                    for (RecordComponent component : record.getRecordComponents()) {
                        fields.add(RecordWalk.name(component));
                    }
                });
        assertEquals(fields, new TreeSet<>(KNOWLEDGE.decisions().keySet()));
    }

    @Test
    void fullCase_comesOutAsDecided() {
        CaseFile full = (CaseFile) RecordWalk.filled(CaseFile.class);
        compare(full, new CaseParts(new Rounding(KNOWLEDGE), references(full)).of(full, ID));
    }

    /** What was not done has no other field: a session is looked at in which everything was, and one in which nothing. */
    @Test
    void fullDelivery_comesOutAsDecided() {
        CaseFile full = (CaseFile) RecordWalk.filled(CaseFile.class);
        DeliveredSession session = (DeliveredSession) RecordWalk.filled(DeliveredSession.class);
        DeliveredParts parts = new DeliveredParts(new Rounding(KNOWLEDGE), references(full));
        assertEquals(List.of(), parts.of(List.of(session), ID), "nothing was done in it");
        DeliveredSession done = Doing.everything(session);
        compare(done, parts.of(List.of(done), ID).get(0));
    }

    @Test
    void fullFollowUp_comesOutAsDecided() {
        CaseFile full = (CaseFile) RecordWalk.filled(CaseFile.class);
        FollowUp followUp = (FollowUp) RecordWalk.filled(FollowUp.class);
        compare(followUp, new FollowUpParts(new Rounding(KNOWLEDGE), references(full)).of(followUp, ID));
    }

    private static References references(CaseFile full) {
        return new References(full, new Faults());
    }

    private static void compare(Object before, Object after) {
        List<String> wrong = new ArrayList<>();
        compare(before, after, wrong);
        assertEquals(List.of(), wrong);
    }

    private static void compare(Object before, Object after, List<String> wrong) {
        for (RecordComponent component : before.getClass().getRecordComponents()) {
            String name = RecordWalk.name(component);
            Object was = RecordWalk.value(component, before);
            Object is = RecordWalk.value(component, after);
            FieldDecision decision = KNOWLEDGE.decisions().get(name);
            if (decision == FieldDecision.PARTS) {
                List<Object> parts = RecordWalk.records(was);
                assertTrue(!parts.isEmpty(), name + " has parts");
                assertEquals(parts.size(), RecordWalk.records(is).size(), name);
                for (int i = 0; i < parts.size(); i++) {
                    compare(parts.get(i), RecordWalk.records(is).get(i), wrong);
                }
            } else if (atItsPlace(decision) != is(was, is)) {
                wrong.add(name + " is decided " + decision + ", and " + was + " came out as " + is);
            }
        }
    }

    /** Banded and scrubbed fields leave nothing at their place, like dropped ones. */
    private static FieldDecision atItsPlace(FieldDecision decision) {
        return decision == FieldDecision.BANDED || decision == FieldDecision.SCRUBBED
                ? FieldDecision.DROPPED
                : decision;
    }

    /** What seems to have been decided. */
    private static FieldDecision is(Object was, Object is) {
        if (is.equals(Optional.empty()) || is.equals(OptionalDouble.empty()) || is.equals(OptionalInt.empty())) {
            return FieldDecision.DROPPED;
        }
        if (is instanceof Record record && RecordWalk.records(record).size() == 1 && empty(record)) {
            return FieldDecision.DROPPED;
        }
        if (is.equals(was)) {
            return FieldDecision.KEPT;
        }
        return is instanceof String ? FieldDecision.RENAMED : FieldDecision.ROUNDED;
    }

    private static boolean empty(Record record) {
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            if (is("", RecordWalk.value(component, record)) != FieldDecision.DROPPED) {
                return false;
            }
        }
        return true;
    }
}
