package org.tunica.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Technique;
import org.tunica.physics.OptionNumbers;
import org.tunica.rules.Verdict;

/** Writes what was judged about an option into its advice. */
final class OptionWriter {
    private final Scoring scoring;
    private final SettingsPlanner settings;

    OptionWriter(Knowledge knowledge) {
        this.scoring = new Scoring(knowledge);
        this.settings = new SettingsPlanner(knowledge);
    }

    OptionAdvice write(Judged judged) {
        Technique technique = judged.option().technique();
        OptionNumbers numbers = judged.option().derived().options().get(technique.id());
        OptionStanding standing = judged.standing();
        Optional<Score> score = standing.ranked() ? Optional.of(scoring.score(judged)) : Optional.empty();
        return new OptionAdvice(
                OptionalInt.empty(),
                OptionalDouble.empty(),
                technique.id(),
                technique.says(),
                technique.family(),
                standing,
                why(judged, standing),
                score.map(points -> OptionalDouble.of(points.value())).orElse(OptionalDouble.empty()),
                score,
                Optional.empty(),
                settings.settings(judged),
                Forecasting.predicted(technique, numbers),
                reasons(judged),
                reasons(Needed.strongestFirst(judged.cautions()), Reason.Stands.CAUTIONS),
                reasons(judged.needs(), Reason.Stands.ASKS));
    }

    /** The settings alone. */
    SettingsAdvice settings(Judged judged) {
        return settings.settings(judged);
    }

    private static String why(Judged judged, OptionStanding standing) {
        return switch (standing) {
            case EXCLUDED -> because(judged.exclusions());
            case NOT_IN_ROOM ->
                because(judged.absences()) + "; in a room that holds it: "
                        + judged.standingInAnotherRoom().word();
            case MEASURE_FIRST -> Needed.line(judged.needs());
            case CAREFUL -> because(Needed.strongestFirst(judged.cautions()));
            case PREFERRED, SUITABLE ->
                judged.reasonsFor().isEmpty()
                        ? "no rule speaks against it"
                        : because(Needed.strongestFirst(judged.reasonsFor()));
        };
    }

    private static String because(List<Verdict> verdicts) {
        Verdict first = verdicts.get(0);
        String more = verdicts.size() > 1 ? ", and " + (verdicts.size() - 1) + " more" : "";
        return first.rule().title() + " (" + first.rule().id() + ")" + more;
    }

    private static List<Reason> reasons(Judged judged) {
        List<Reason> reasons = new ArrayList<>();
        reasons.addAll(reasons(judged.exclusions(), Reason.Stands.EXCLUDES));
        reasons.addAll(reasons(judged.absences(), Reason.Stands.NOT_IN_ROOM));
        reasons.addAll(reasons(Needed.strongestFirst(judged.reasonsFor()), Reason.Stands.FOR));
        reasons.addAll(reasons(Needed.strongestFirst(judged.reasonsAgainst()), Reason.Stands.AGAINST));
        reasons.addAll(reasons(judged.settings(), Reason.Stands.SETS));
        reasons.addAll(reasons(judged.findings(), Reason.Stands.FINDS));
        return reasons;
    }

    private static List<Reason> reasons(List<Verdict> verdicts, Reason.Stands stands) {
        return verdicts.stream().map(verdict -> Reason.of(verdict, stands)).toList();
    }
}
