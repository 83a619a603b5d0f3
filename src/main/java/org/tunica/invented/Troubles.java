package org.tunica.invented;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.treatment.Complication;
import org.tunica.treatment.FollowUp;

/** What went wrong afterwards, by way and vein. */
final class Troubles {
    private static final String PREFIX = "invented.complication.";
    private static final Complication.Kind NERVE = Complication.Kind.SENSORY_NERVE_INJURY;

    /** What is seen only when the first reaction is over. */
    private static final Set<Complication.Kind> LATE =
            EnumSet.of(Complication.Kind.PIGMENTATION, Complication.Kind.MATTING);

    private final Map<Complication.Kind, Shares<Family>> byFamily = new EnumMap<>(Complication.Kind.class);
    private final Shares<Segment.Vein> nerveAfterHeat;
    private final Choice<FollowUp.Clot> clots;
    private final Choice<Complication.Grade> grades;

    Troubles(Knowledge knowledge) {
        for (Complication.Kind kind : Complication.Kind.values()) {
            if (kind != NERVE && knowledge.invented().containsKey(PREFIX + kind.word())) {
                byFamily.put(
                        kind,
                        Shares.of(knowledge.invented(PREFIX + kind.word()), word -> Choice.word(word, Family.class)));
            }
        }
        this.nerveAfterHeat =
                Shares.of(knowledge.invented(PREFIX + NERVE.word()), word -> Choice.word(word, Segment.Vein.class));
        this.clots = Choice.ofWords(knowledge.invented("invented.clot"), FollowUp.Clot.class);
        this.grades = Choice.ofWords(knowledge.invented("invented.grade"), Complication.Grade.class);
    }

    /** What is new at the first visit, or at the one after it. */
    List<Complication> seen(Draw draw, Given given, boolean first) {
        List<Complication> seen = new ArrayList<>();
        byFamily.forEach((kind, shares) -> {
            if (first != LATE.contains(kind) && draw.happens(shares.of(given.family()))) {
                seen.add(graded(draw, kind));
            }
        });
        boolean heated = given.family() == Family.HEAT;
        if (first
                && heated
                && draw.happens(nerveAfterHeat.of(given.made().segment().vein()))) {
            seen.add(graded(draw, NERVE));
        }
        return seen;
    }

    private Complication graded(Draw draw, Complication.Kind kind) {
        return new Complication(kind, Optional.of(grades.from(draw)), Optional.empty());
    }

    /** A clot at the deep end, which only a heated trunk that begins at the junction can have here. */
    FollowUp.Clot clot(Draw draw, Given given) {
        boolean heated = given.family() == Family.HEAT
                && given.made().segment().topToDeepJunctionCm().isPresent();
        return heated ? clots.from(draw) : FollowUp.Clot.NONE;
    }
}
