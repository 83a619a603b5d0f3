package org.tunica.rules;

import java.util.HashMap;
import java.util.List;
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
import org.tunica.casefile.Word;
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
    /** How the ids start of fields that depend on the technique. */
    private static final List<String> OF_OPTION = List.of("option.", "derived.");

    /** Ids of fields that rest on a search for a heat setting. */
    static final Set<String> OF_HEAT = Set.of(
            "derived.wallFractionKilled",
            "derived.deathChance",
            "derived.deathDepthPerWall",
            "derived.charChance",
            "derived.perforationIndex",
            "derived.nervePeakC",
            "derived.nerveDoseMin",
            "derived.skinPeakC",
            "derived.skinDoseMin");

    private final AnswerTable<Considered> table = new AnswerTable<>();

    /** What each technique needs to know, in the nouns of the glossary. */
    private final Map<String, Answer> needs = new HashMap<>();

    FactFields(Knowledge knowledge, AnswerTable<Segment> ofSegment) {
        Map<String, String> nouns = knowledge.glossary().fields().values().stream()
                .collect(Collectors.toMap(GlossaryField::id, GlossaryField::noun));
        knowledge
                .techniques()
                .forEach((id, technique) -> needs.put(
                        id,
                        new Answer.Words(technique.needs().stream()
                                .map(need -> nouns.getOrDefault(need, need))
                                .collect(Collectors.toSet()))));
        technique();
        patient();
        room();
        limb();
        table.addAll(ofSegment, Considered::segment);
        derived();
        foreseen();
        table.addAll(new RankingFields().table(), option -> RankingFacts.NOT_YET);
    }

    /** Whether the answers of a field may differ between two techniques for one segment. */
    static boolean ofOption(String id) {
        return OF_OPTION.stream().anyMatch(id::startsWith);
    }

    AnswerTable<Considered> table() {
        return table;
    }

    private void technique() {
        table.word(
                "option.family",
                option -> new Answer.OneWord(option.technique().family().word()));
        table.word(
                "option.technique",
                option -> new Answer.OneWord(option.technique().id()));
        table.set("option.needs", this::needs);
        table.flag(
                "option.inRoom",
                option -> option.caseFile()
                        .room()
                        .devices()
                        .map(devices -> devices.contains(option.technique().id())));
    }

    private Answer needs(Considered option) {
        return needs.get(option.technique().id());
    }

    private void patient() {
        table.number("patient.ageYears", option -> patient(option).ageYears());
        table.word("patient.sex", option -> Answer.ofWord(patient(option).sex()));
        table.number("patient.weightKg", option -> patient(option).weightKg());
        table.number("patient.bodyMassIndex", option -> bodyMassIndex(patient(option)));
        table.flag(
                "patient.pregnant",
                option -> unlessMale(patient(option), patient(option).pregnant()));
        table.flag(
                "patient.breastfeeding",
                option -> unlessMale(patient(option), patient(option).breastfeeding()));
        table.word(
                "patient.anticoagulation",
                option -> Answer.ofWord(patient(option).anticoagulation()));
        table.word("patient.mobility", option -> Answer.ofWord(patient(option).mobility()));
        table.flag("patient.needleAversion", option -> patient(option).needleAversion());
        table.flag("patient.canLieHeadDown", option -> patient(option).canLie().headDown());
        table.flag("patient.canLieFlat", option -> patient(option).canLie().flat());
        table.flag("patient.canLieProne", option -> patient(option).canLie().prone());
        table.set("patient.allergies", option -> Answer.ofSet(patient(option).allergies()));
        table.set(
                "patient.conditions",
                option -> Answer.ofSet(patient(option).conditions().map(ids -> conditions(option, ids))));
        table.set(
                "patient.preferences",
                option -> Answer.ofSet(patient(option).preferences().map(FactFields::words)));
    }

    /** Nobody need ask a man; a man said to be pregnant is refused when the case is read. */
    private static Optional<Boolean> unlessMale(Patient patient, Optional<Boolean> holds) {
        return holds.or(() -> patient.sex().filter(Patient.Sex.MALE::equals).map(male -> false));
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
        table.set(
                "room.sclerosantDrugs",
                option -> Answer.ofSet(drugs(option.caseFile().room())));
        table.set(
                "room.foamGas",
                option -> Answer.ofSet(option.caseFile().room().foamGas().map(FactFields::words)));
        table.flag(
                "room.adrenaline",
                option -> option.caseFile().room().tumescent().flatMap(Room.Tumescent::adrenaline));
        table.flag("room.tiltTable", option -> option.caseFile().room().tiltTable());
    }

    private static Optional<Set<String>> drugs(Room room) {
        return room.sclerosants()
                .map(stock -> stock.stream().map(drug -> drug.drug().word()).collect(Collectors.toSet()));
    }

    private static Set<String> words(Set<? extends Word> named) {
        Set<String> words = new TreeSet<>();
        named.forEach(one -> words.add(one.word()));
        return words;
    }

    private void limb() {
        table.word("limb.ceapClass", option -> Answer.ofWord(option.limb().ceapClass()));
        table.number("limb.ankleBrachialIndex", option -> option.limb().ankleBrachialIndex());
        table.number("limb.anklePressureMmHg", option -> option.limb().anklePressureMmHg());
        table.number("limb.toePressureMmHg", option -> option.limb().toePressureMmHg());
        table.word("limb.deepVeins", option -> Answer.ofWord(option.limb().deepVeins()));
        table.flag("limb.trunkIsMainOutflow", option -> option.limb().trunkIsMainOutflow(patient(option)));
    }

    private void derived() {
        computed("derived.relaxedLumenMm", SegmentNumbers::relaxedLumenMm);
        computed("derived.relaxedWallMm", SegmentNumbers::relaxedWallMm);
        computed("derived.lumenVolumeMl", SegmentNumbers::lumenVolumeMl);
        ofOption("derived.wallAtWorkMm", OptionNumbers::wallAtWorkMm);
        ofOption("derived.wallFractionKilled", OptionNumbers::wallFractionKilled);
        ofOption("derived.sclerosantMgPerKg", OptionNumbers::sclerosantMgPerKg);
        ofOption("derived.drugMl", OptionNumbers::drugMl);
        ofOption("derived.lidocaineMgPerKg", OptionNumbers::lidocaineMgPerKg);
        table.flag("derived.bloodless", option -> option.numbers().bloodless());
    }

    /** What the heat model foresees at the setting it proposes; nine draws of ten keep below the peaks and doses. */
    private void foreseen() {
        spread("derived.deathChance", HeatSpread::delayedProbability);
        spread(
                "derived.deathDepthPerWall",
                spread -> spread.delayedDepthPerWall().p50());
        spread("derived.charChance", HeatSpread::charProbability);
        table.number("derived.perforationIndex", FactFields::perforationIndex);
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
        table.number(
                id,
                option -> foreseen(option)
                        .map(spread -> OptionalDouble.of(read.applyAsDouble(spread)))
                        .orElse(OptionalDouble.empty()));
    }

    private void warmth(
            String id, Function<HeatSpread, Optional<WarmedSpread>> where, ToDoubleFunction<WarmedSpread> read) {
        table.number(
                id,
                option -> foreseen(option)
                        .flatMap(where)
                        .map(point -> OptionalDouble.of(read.applyAsDouble(point)))
                        .orElse(OptionalDouble.empty()));
    }

    private static Optional<HeatSpread> foreseen(Considered option) {
        return option.numbers().heat().flatMap(HeatOutlook::proposed).map(ProposedSetting::spread);
    }

    private void computed(String id, Function<SegmentNumbers, OptionalDouble> read) {
        table.number(id, option -> read.apply(option.derived().segment()));
    }

    private void ofOption(String id, Function<OptionNumbers, OptionalDouble> read) {
        table.number(id, option -> read.apply(option.numbers()));
    }

    private static Patient patient(Considered option) {
        return option.caseFile().patient();
    }
}
