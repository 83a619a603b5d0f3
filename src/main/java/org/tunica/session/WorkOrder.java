package org.tunica.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;

/** Puts the segments of a session into the order of work and says why; the principles stand in knowledge/work-order.yaml. */
final class WorkOrder {
    private static final Comparator<Candidate> ORDER = Comparator.comparing(WorkOrder::prone)
            .thenComparing((Candidate one) -> one.limb().side())
            .thenComparing(WorkOrder::branch)
            .thenComparing(WorkOrder::foam)
            .thenComparing(WorkOrder::level)
            .thenComparing((Candidate one) -> one.segment().ref());

    private final Knowledge knowledge;

    WorkOrder(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    static List<Candidate> ordered(List<Candidate> chosen) {
        return chosen.stream().sorted(ORDER).toList();
    }

    /** The principles that put a step behind one of those before it. */
    List<String> because(Candidate step, List<Candidate> before) {
        List<String> reasons = new ArrayList<>();
        List<Candidate> sameLeg =
                before.stream().filter(one -> one.limb() == step.limb()).toList();
        if (prone(step) && before.stream().anyMatch(one -> !prone(one))) {
            reasons.add(says("prone-once"));
        }
        if (branch(step) && sameLeg.stream().anyMatch(one -> !branch(one))) {
            reasons.add(says("trunk-first"));
        }
        if (foam(step) && sameLeg.stream().anyMatch(one -> !foam(one))) {
            reasons.add(says("foam-after-heat"));
        }
        boolean lower = sameLeg.stream()
                .anyMatch(one -> branch(one) == branch(step) && foam(one) == foam(step) && level(one) < level(step));
        if (lower) {
            reasons.add(says("upper-first"));
        }
        return reasons;
    }

    private String says(String principle) {
        return knowledge.principles().get(principle).says();
    }

    private static boolean prone(Candidate one) {
        return one.demand().position() == Position.PRONE;
    }

    private static boolean branch(Candidate one) {
        return one.segment().vein() == Segment.Vein.TRIBUTARY || one.segment().vein() == Segment.Vein.PERFORATOR;
    }

    private static boolean foam(Candidate one) {
        return one.option().family() == Family.FOAM;
    }

    /** Levels from the groin down; the hollow of the knee counts as the knee. */
    private static int level(Candidate one) {
        Segment.Level level = one.segment().level();
        return level == Segment.Level.POPLITEAL ? Segment.Level.KNEE.ordinal() : level.ordinal();
    }
}
