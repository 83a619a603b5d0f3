package org.tunica.review;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tunica.knowledge.AcceptedRemark;

/** Which remarks people let stand, and why. A fault is never let stand, and an acceptance of nothing is a fault itself. */
final class Acceptances {
    private final Collection<AcceptedRemark> accepted;

    Acceptances(Collection<AcceptedRemark> accepted) {
        this.accepted = accepted;
    }

    /** The remarks, those let stand with their reason, and one more for each acceptance that meets none. */
    List<Remark> appliedTo(List<Remark> remarks) {
        Stream<Remark> told = remarks.stream()
                .map(remark -> reason(remark).map(remark::accepted).orElse(remark));
        Stream<Remark> idle = accepted.stream()
                .filter(acceptance -> remarks.stream().noneMatch(remark -> meets(acceptance, remark)))
                .map(Acceptances::acceptsNothing);
        return Stream.concat(told, idle).toList();
    }

    private Optional<String> reason(Remark remark) {
        return accepted.stream()
                .filter(acceptance -> meets(acceptance, remark))
                .map(AcceptedRemark::why)
                .findFirst();
    }

    private static boolean meets(AcceptedRemark acceptance, Remark remark) {
        return !remark.fault()
                && acceptance.remark().equals(remark.kind().words())
                && Set.copyOf(acceptance.rules()).equals(new HashSet<>(remark.rules()));
    }

    private static Remark acceptsNothing(AcceptedRemark acceptance) {
        return new Remark(
                Remark.Kind.ACCEPTS_NOTHING,
                acceptance.rules(),
                List.of("knowledge/accepted.yaml: " + acceptance.id()),
                acceptance.id() + " lets \"" + acceptance.remark() + "\" stand of "
                        + String.join(" and ", acceptance.rules()) + ", which nothing remarks or which is a fault");
    }
}
