package org.tunica.pastcases;

import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Ceap;
import org.tunica.treatment.Complication;
import org.tunica.treatment.FollowUp;
import org.tunica.treatment.SeverityGrades;

/** What of a follow-up may stand in a past case, field by field; what is not named here does not get in. */
final class FollowUpParts {
    private final Rounding rounding;
    private final References references;

    FollowUpParts(Rounding rounding, References references) {
        this.rounding = rounding;
        this.references = references;
    }

    FollowUp of(FollowUp followUp, String id) {
        return new FollowUp(
                FollowUp.FORMAT, id, followUp.limbs().stream().map(this::limb).toList());
    }

    private FollowUp.FollowedLimb limb(FollowUp.FollowedLimb limb) {
        return new FollowUp.FollowedLimb(
                limb.side(),
                limb.ceapBefore().map(FollowUpParts::ceap),
                limb.vcssBefore().map(FollowUpParts::grades),
                limb.treated().stream().map(this::treated).toList(),
                limb.visits().stream().map(this::visit).toList());
    }

    private FollowUp.TreatedLength treated(FollowUp.TreatedLength treated) {
        return new FollowUp.TreatedLength(
                references.of("$.limbs.treated", treated.ref()),
                rounding.of(Step.LENGTH, treated.treatedLengthCm()),
                treated.closure());
    }

    private FollowUp.Visit visit(FollowUp.Visit visit) {
        return new FollowUp.Visit(
                visit.daysAfter(),
                visit.painOfTen(),
                visit.ceap().map(FollowUpParts::ceap),
                visit.vcss().map(FollowUpParts::grades),
                visit.segments().map(seen -> seen.stream().map(this::seen).toList()));
    }

    private FollowUp.Seen seen(FollowUp.Seen seen) {
        Optional<List<Complication>> complications = seen.complications()
                .map(all -> all.stream()
                        .map(one -> new Complication(one.kind(), one.grade(), one.clavienDindo()))
                        .toList());
        return new FollowUp.Seen(
                references.of("$.limbs.visits.segments", seen.ref()),
                rounding.of(Step.LENGTH, seen.openLengthCm()),
                rounding.of(Step.REFLUX, seen.refluxSeconds()),
                seen.clot(),
                rounding.of(Step.STRENGTH, seen.deepLumenPercent()),
                complications,
                seen.again());
    }

    private static Ceap ceap(Ceap ceap) {
        return new Ceap(ceap.clinical(), ceap.symptoms(), ceap.causes(), ceap.anatomy(), ceap.flow());
    }

    private static SeverityGrades grades(SeverityGrades grades) {
        return new SeverityGrades(
                grades.pain(),
                grades.varicoseVeins(),
                grades.venousOedema(),
                grades.pigmentation(),
                grades.inflammation(),
                grades.induration(),
                grades.numberOfActiveUlcers(),
                grades.longestUlcerDuration(),
                grades.largestUlcerSize(),
                grades.compressionUse());
    }
}
