package org.tunica.rules;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Patient;
import org.tunica.casefile.Room;
import org.tunica.casefile.Segment;
import org.tunica.heat.HeatSpread;
import org.tunica.heat.ProposedSetting;
import org.tunica.heat.WarmedSpread;
import org.tunica.knowledge.GlossaryField;
import org.tunica.knowledge.Knowledge;
import org.tunica.physics.HeatOutlook;
import org.tunica.physics.OptionNumbers;
import org.tunica.physics.SegmentNumbers;

/** How each field of the glossary is answered for an option. A new field is a code change; a new rule is not. */
final class FactFields {
    private final Map<String, Function<Considered, Answer>> answers = new LinkedHashMap<>();
    private final Map<String, String> nouns;

    FactFields(Knowledge knowledge, Map<String, Function<Segment, Answer>> ofSegment) {
        nouns = knowledge.glossary().fields().values().stream()
                .collect(Collectors.toMap(GlossaryField::id, GlossaryField::noun));
        technique();
        patient();
        room();
        limb();
        segment(ofSegment);
        derived();
        foreseen();
    }

    /** Every field that has an answer, by id, in a fixed order. */
    Map<String, Function<Considered, Answer>> answers() {
        return Collections.unmodifiableMap(answers);
    }

    private void technique() {
        answers.put(
                "option.family",
                option -> new Answer.OneWord(option.technique().family().word()));
        answers.put(
                "option.technique",
                option -> new Answer.OneWord(option.technique().id()));
        answers.put("option.needs", this::needs);
        answers.put(
                "option.inRoom",
                option -> Answer.ofFlag(option.caseFile()
                        .room()
                        .devices()
                        .map(devices -> devices.contains(option.technique().id()))));
    }

    private Answer needs(Considered option) {
        return new Answer.Words(option.technique().needs().stream()
                .map(id -> nouns.getOrDefault(id, id))
                .collect(Collectors.toSet()));
    }

    private void patient() {
        number("patient.ageYears", option -> patient(option).ageYears());
        word("patient.sex", option -> Answer.ofWord(patient(option).sex()));
        number("patient.weightKg", option -> patient(option).weightKg());
        number("patient.bodyMassIndex", option -> bodyMassIndex(patient(option)));
        flag("patient.pregnant", option -> patient(option).pregnant());
        flag("patient.breastfeeding", option -> patient(option).breastfeeding());
        word("patient.anticoagulation", option -> Answer.ofWord(patient(option).anticoagulation()));
        word("patient.mobility", option -> Answer.ofWord(patient(option).mobility()));
        flag("patient.needleAversion", option -> patient(option).needleAversion());
        flag("patient.canLieHeadDown", option -> patient(option).canLie().headDown());
        flag("patient.canLieFlat", option -> patient(option).canLie().flat());
        flag("patient.canLieProne", option -> patient(option).canLie().prone());
        word("patient.allergies", option -> Answer.ofSet(patient(option).allergies()));
        word(
                "patient.conditions",
                option -> Answer.ofSet(patient(option).conditions().map(ids -> conditions(option, ids))));
    }

    /** Fresh clot in the deep veins of either leg is a condition of the patient, listed or not: it bars both legs. */
    private static Set<String> conditions(Considered option, Set<String> listed) {
        Set<String> all = new TreeSet<>(listed);
        if (option.caseFile().limbs().stream().anyMatch(FactFields::acutelyThrombosed)) {
            all.add("deep-vein-thrombosis-acute");
        }
        return all;
    }

    private static boolean acutelyThrombosed(Limb limb) {
        return limb.deepVeins().equals(Optional.of(Limb.DeepVeins.ACUTE_THROMBOSIS));
    }

    private static OptionalDouble bodyMassIndex(Patient patient) {
        if (patient.weightKg().isEmpty() || patient.heightCm().isEmpty()) {
            return OptionalDouble.empty();
        }
        double heightM = patient.heightCm().getAsDouble() / 100;
        return OptionalDouble.of(patient.weightKg().getAsDouble() / (heightM * heightM));
    }

    private void room() {
        word(
                "room.sclerosantDrugs",
                option -> Answer.ofSet(drugs(option.caseFile().room())));
        word(
                "room.foamGas",
                option -> Answer.ofSet(option.caseFile().room().foamGas().map(FactFields::gases)));
        flag("room.adrenaline", option -> option.caseFile().room().tumescent().flatMap(Room.Tumescent::adrenaline));
        flag("room.tiltTable", option -> option.caseFile().room().tiltTable());
    }

    private static Optional<Set<String>> drugs(Room room) {
        return room.sclerosants()
                .map(stock -> stock.stream().map(drug -> drug.drug().word()).collect(Collectors.toSet()));
    }

    private static Set<String> gases(Set<Room.FoamGas> gases) {
        Set<String> words = new TreeSet<>();
        gases.forEach(gas -> words.add(gas.word()));
        return words;
    }

    private void limb() {
        word("limb.ceapClass", option -> Answer.ofWord(option.limb().ceapClass()));
        number("limb.ankleBrachialIndex", option -> option.limb().ankleBrachialIndex());
        word("limb.deepVeins", option -> Answer.ofWord(option.limb().deepVeins()));
    }

    private void segment(Map<String, Function<Segment, Answer>> ofSegment) {
        ofSegment.forEach((id, read) -> answers.put(id, option -> read.apply(option.segment())));
    }

    private void derived() {
        computed("derived.relaxedLumenMm", SegmentNumbers::relaxedLumenMm);
        computed("derived.relaxedWallMm", SegmentNumbers::relaxedWallMm);
        computed("derived.lumenVolumeMl", SegmentNumbers::lumenVolumeMl);
        ofOption("derived.wallAtWorkMm", OptionNumbers::wallAtWorkMm);
        ofOption("derived.wallFractionKilled", OptionNumbers::wallFractionKilled);
        ofOption("derived.sclerosantMgPerKg", OptionNumbers::sclerosantMgPerKg);
        ofOption("derived.lidocaineMgPerKg", OptionNumbers::lidocaineMgPerKg);
        flag("derived.bloodless", option -> option.numbers().bloodless());
    }

    /** What the heat model foresees at the setting it proposes; nine draws of ten keep below the peaks and doses. */
    private void foreseen() {
        spread("derived.deathChance", HeatSpread::delayedProbability);
        spread(
                "derived.deathDepthPerWall",
                spread -> spread.delayedDepthPerWall().p50());
        spread("derived.charChance", HeatSpread::charProbability);
        number("derived.perforationIndex", FactFields::perforationIndex);
        warmth("derived.nervePeakC", HeatSpread::nerve, point -> point.peakC().p90());
        warmth(
                "derived.nerveDoseMin",
                HeatSpread::nerve,
                point -> point.cem43Min().p90());
        warmth("derived.skinPeakC", HeatSpread::skin, point -> point.peakC().p90());
        warmth(
                "derived.skinDoseMin",
                HeatSpread::skin,
                point -> point.cem43Min().p90());
    }

    /** The worse of the spread and of the run at short steps, which the draws do not take. */
    private static OptionalDouble perforationIndex(Considered option) {
        return option.numbers()
                .heat()
                .flatMap(HeatOutlook::proposed)
                .map(found -> OptionalDouble.of(Math.max(
                        found.spread().perforationIndex().p90(), found.run().perforationIndex())))
                .orElse(OptionalDouble.empty());
    }

    private void spread(String id, ToDoubleFunction<HeatSpread> read) {
        number(
                id,
                option -> foreseen(option)
                        .map(spread -> OptionalDouble.of(read.applyAsDouble(spread)))
                        .orElse(OptionalDouble.empty()));
    }

    private void warmth(
            String id, Function<HeatSpread, Optional<WarmedSpread>> where, ToDoubleFunction<WarmedSpread> read) {
        number(
                id,
                option -> foreseen(option)
                        .flatMap(where)
                        .map(point -> OptionalDouble.of(read.applyAsDouble(point)))
                        .orElse(OptionalDouble.empty()));
    }

    private static Optional<HeatSpread> foreseen(Considered option) {
        return option.numbers().heat().flatMap(HeatOutlook::proposed).map(ProposedSetting::spread);
    }

    private void number(String id, Function<Considered, OptionalDouble> read) {
        answers.put(id, option -> Answer.of(read.apply(option)));
    }

    private void flag(String id, Function<Considered, Optional<Boolean>> read) {
        answers.put(id, option -> Answer.ofFlag(read.apply(option)));
    }

    private void word(String id, Function<Considered, Answer> read) {
        answers.put(id, read);
    }

    private void computed(String id, Function<SegmentNumbers, OptionalDouble> read) {
        number(id, option -> read.apply(option.derived().segment()));
    }

    private void ofOption(String id, Function<OptionNumbers, OptionalDouble> read) {
        number(id, option -> read.apply(option.numbers()));
    }

    private static Patient patient(Considered option) {
        return option.caseFile().patient();
    }
}
