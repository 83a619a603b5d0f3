package org.tunica.mutation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.rules.Conclusion;
import org.tunica.rules.Conclusion.Kind;
import org.tunica.rules.Conclusion.Strength;

/** Every way to get a conclusion wrong that its stage lets through. */
final class ConclusionMutants {
    private final Knowledge knowledge;
    private final List<Conclusion> limits = new ArrayList<>();

    ConclusionMutants(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    static List<Conclusion> of(Conclusion conclusion, Knowledge knowledge) {
        ConclusionMutants all = new ConclusionMutants(knowledge);
        if (conclusion instanceof Conclusion.Find find) {
            return List.of(new Conclusion.Find(all.anotherFinding(find.finding())));
        }
        if (conclusion instanceof Conclusion.Weighed weighed) {
            return weighed(weighed);
        }
        if (conclusion instanceof Conclusion.SetTo set) {
            all.another(set.value())
                    .ifPresent(
                            limit -> all.limits.add(new Conclusion.SetTo(set.settingId(), set.settingName(), limit)));
        }
        if (conclusion instanceof Conclusion.Keep keep) {
            all.another(keep.low())
                    .ifPresent(low -> all.limits.add(
                            new Conclusion.Keep(keep.settingId(), keep.settingName(), low, keep.high())));
            all.another(keep.high())
                    .ifPresent(high -> all.limits.add(
                            new Conclusion.Keep(keep.settingId(), keep.settingName(), keep.low(), high)));
        }
        return all.limits;
    }

    /** Every other strength, and for a preference the same strength on the other side. */
    private static List<Conclusion> weighed(Conclusion.Weighed conclusion) {
        List<Conclusion> others = new ArrayList<>();
        for (Kind kind :
                conclusion.kind() == Kind.CAUTION ? List.of(Kind.CAUTION) : List.of(Kind.PREFER, Kind.DISFAVOUR)) {
            for (Strength strength : Strength.values()) {
                boolean oneWrong = kind != conclusion.kind() ^ strength != conclusion.strength();
                if (oneWrong && may(kind, strength)) {
                    others.add(new Conclusion.Weighed(kind, strength));
                }
            }
        }
        return others;
    }

    private static boolean may(Kind kind, Strength strength) {
        return kind == Kind.PREFER || strength != Strength.FIRST_CHOICE;
    }

    private String anotherFinding(String finding) {
        return next(List.copyOf(knowledge.glossary().findings().keySet()), finding);
    }

    /** The next limit of the same unit that has another value. */
    private Optional<Quantity> another(Quantity limit) {
        List<String> sameUnit = knowledge.quantities().values().stream()
                .filter(other -> other.unit().equals(limit.unit()))
                .filter(other -> other.id().equals(limit.id()) || other.value() != limit.value())
                .map(Quantity::id)
                .sorted()
                .toList();
        return sameUnit.size() < 2 ? Optional.empty() : Optional.of(knowledge.quantity(next(sameUnit, limit.id())));
    }

    private static String next(List<String> ids, String id) {
        return ids.get((ids.indexOf(id) + 1) % ids.size());
    }
}
