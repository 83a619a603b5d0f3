package org.tunica.pastcases;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Patient;
import org.tunica.casefile.Word;
import org.tunica.knowledge.Knowledge;
import org.tunica.treatment.FollowUp;

/** Tells less of a waiting case, so that it finds its crowd sooner. */
public final class Coarsening {
    /** What can be told less exactly. */
    public enum What implements Word {
        /** Wider bands, or no age when the band is wide already. */
        AGE,
        SEX,
        /** Wider bands, or no weight when the band is wide already. */
        WEIGHT,
        YEAR,
        /** The CEAP class, of the map and of the follow-up. */
        LEG
    }

    private final Banding ages;
    private final Banding weights;
    private final int together;

    /** A coarsening with the bands of a release. */
    public Coarsening(Knowledge knowledge) {
        this.ages = Banding.ofAge(knowledge);
        this.weights = Banding.ofWeight(knowledge);
        this.together = AnonymityLimits.of(knowledge).coarser();
    }

    /**
     * The same case with less told.
     *
     * @param without ids of conditions and allergies no longer told; the list that held one becomes unknown
     * @throws FaultyInput when the case names no such condition, or tells no more than that already
     */
    public WaitingCase of(WaitingCase waiting, Set<What> less, Set<String> without) {
        WaitingCase coarser = coarser(waiting, less, without);
        if (coarser.equals(waiting)) {
            throw new FaultyInput(
                    "coarsen", List.of(new Fault("case " + waiting.id(), "tells no more than that already")));
        }
        return coarser;
    }

    private WaitingCase coarser(WaitingCase waiting, Set<What> less, Set<String> without) {
        return new WaitingCase(
                WaitingCase.FORMAT,
                waiting.id(),
                waiting.invented(),
                waiting.site(),
                less.contains(What.YEAR) ? OptionalInt.empty() : waiting.year(),
                less.contains(What.AGE) ? coarser(ages, waiting.ageBandYears()) : waiting.ageBandYears(),
                less.contains(What.WEIGHT) ? coarser(weights, waiting.weightBandKg()) : waiting.weightBandKg(),
                caseFile(waiting.caseFile(), less, without),
                waiting.delivered(),
                less.contains(What.LEG) ? withoutClasses(waiting.followUp()) : waiting.followUp(),
                waiting.notes());
    }

    private Optional<Band> coarser(Banding banding, Optional<Band> band) {
        return band.map(one -> banding.coarser(one, together)).filter(wide -> !wide.equals(band.get()));
    }

    private static CaseFile caseFile(CaseFile from, Set<What> less, Set<String> without) {
        List<Limb> limbs = less.contains(What.LEG)
                ? from.limbs().stream().map(Coarsening::withoutClass).toList()
                : from.limbs();
        return new CaseFile(
                from.format(),
                from.caseRef(),
                patient(from.patient(), less, without),
                from.room(),
                from.importance(),
                limbs);
    }

    private static Limb withoutClass(Limb limb) {
        return new Limb(
                limb.side(),
                Optional.empty(),
                limb.ankleBrachialIndex(),
                limb.anklePressureMmHg(),
                limb.toePressureMmHg(),
                limb.deepVeins(),
                limb.trunkIsMainOutflow(),
                limb.segments());
    }

    private static Patient patient(Patient from, Set<What> less, Set<String> without) {
        without.stream()
                .filter(id -> !has(from.conditions(), id) && !has(from.allergies(), id))
                .findFirst()
                .ifPresent(id -> {
                    throw new FaultyInput(
                            "coarsen", List.of(new Fault("--without", "the case names no condition or allergy " + id)));
                });
        return new Patient(
                from.ageYears(),
                less.contains(What.SEX) ? Optional.empty() : from.sex(),
                from.weightKg(),
                from.heightCm(),
                from.pregnant(),
                from.breastfeeding(),
                from.anticoagulation(),
                from.mobility(),
                from.needleAversion(),
                from.canLie(),
                fewer(from.allergies(), without),
                fewer(from.conditions(), without),
                from.preferences());
    }

    private static boolean has(Optional<Set<String>> listed, String id) {
        return listed.filter(all -> all.contains(id)).isPresent();
    }

    /** A list with a gap would say that what is missing is absent, so the whole list becomes unknown. */
    private static Optional<Set<String>> fewer(Optional<Set<String>> listed, Set<String> without) {
        return listed.filter(all -> without.stream().noneMatch(all::contains));
    }

    private static FollowUp withoutClasses(FollowUp from) {
        return new FollowUp(
                from.format(),
                from.caseRef(),
                from.limbs().stream()
                        .map(limb -> new FollowUp.FollowedLimb(
                                limb.side(),
                                Optional.empty(),
                                limb.vcssBefore(),
                                limb.treated(),
                                limb.visits().stream()
                                        .map(visit -> new FollowUp.Visit(
                                                visit.daysAfter(),
                                                visit.painOfTen(),
                                                Optional.empty(),
                                                visit.vcss(),
                                                visit.segments()))
                                        .toList()))
                        .toList());
    }
}
