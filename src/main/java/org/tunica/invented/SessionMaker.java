package org.tunica.invented;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tunica.casefile.Room;
import org.tunica.knowledge.Knowledge;
import org.tunica.treatment.DeliveredSegment;
import org.tunica.treatment.DeliveredSession;

/** Puts what was given into sessions, each within what a session may take of foam, drug and lidocaine. */
final class SessionMaker {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private final double mostFoamMl;
    private final double mostPolidocanolMgPerKg;
    private final double mostLidocaineMgPerKg;

    SessionMaker(Knowledge knowledge) {
        this.mostFoamMl = knowledge.value("dose.foam.session");
        this.mostPolidocanolMgPerKg = knowledge.value("dose.polidocanol.day");
        this.mostLidocaineMgPerKg = knowledge.value("dose.tumescent.confirm");
    }

    List<DeliveredSession> of(String caseRef, List<Given> given, double weightKg) {
        List<List<DeliveredSegment>> sessions = new ArrayList<>();
        List<DeliveredSegment> current = new ArrayList<>();
        for (Given one : given) {
            current.add(one.delivered());
            if (current.size() > 1 && !within(current, weightKg)) {
                current.remove(current.size() - 1);
                sessions.add(current);
                current = new ArrayList<>(List.of(one.delivered()));
            }
        }
        sessions.add(current);
        List<DeliveredSession> delivered = new ArrayList<>();
        for (int i = 0; i < sessions.size(); i++) {
            delivered.add(session(caseRef, i + 1, sessions.get(i)));
        }
        return delivered;
    }

    private boolean within(List<DeliveredSegment> segments, double weightKg) {
        double foamMl = 0;
        double polidocanolMg = 0;
        double lidocaineMg = 0;
        for (DeliveredSegment segment : segments) {
            if (segment.sclerosant().isPresent()) {
                DeliveredSegment.Sclerosant drug = segment.sclerosant().get();
                foamMl += drug.foamMl().orElse(0);
                boolean polidocanol = drug.drug().equals(Optional.of(Room.SclerosantDrug.POLIDOCANOL));
                polidocanolMg += polidocanol
                        ? DrugMaker.mg(drug.liquidMl().orElse(0), drug.percent().orElse(0))
                        : 0;
            }
            lidocaineMg += segment.tumescent()
                    .map(fluid -> DrugMaker.mg(
                            fluid.volumeMl().orElse(0), fluid.lidocainePercent().orElse(0)))
                    .orElse(0.0);
        }
        return foamMl <= mostFoamMl
                && polidocanolMg <= mostPolidocanolMgPerKg * weightKg
                && lidocaineMg <= mostLidocaineMgPerKg * weightKg;
    }

    private static DeliveredSession session(String caseRef, int number, List<DeliveredSegment> segments) {
        return new DeliveredSession(
                DeliveredSession.FORMAT,
                caseRef,
                OptionalInt.of(number),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                NONE,
                Optional.of(true),
                Optional.of(true),
                NONE,
                Optional.empty(),
                new DeliveredSession.Totals(NONE, NONE, NONE, NONE, NONE, NONE),
                segments,
                new DeliveredSession.Aftercare(
                        Optional.empty(), Optional.empty(), Optional.of(true), Optional.empty()));
    }
}
