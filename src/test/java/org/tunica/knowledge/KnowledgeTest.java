package org.tunica.knowledge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.casefile.CaseFile;

class KnowledgeTest {
    private static final String WALL = "knowledge/limits/wall.yaml";
    private static final String LASER = "knowledge/techniques/laser-1470-radial.yaml";
    private static final String SOURCES = "knowledge/sources.yaml";
    private static final String MEASUREMENTS = "knowledge/measurements.yaml";

    /** Units that the ending of a number's name stands for, in UCUM. */
    private static final Map<String, String> UNIT_OF_ENDING = Map.ofEntries(
            Map.entry("SecondsPerCm", "s/cm"),
            Map.entry("JPerCm", "J/cm"),
            Map.entry("pulsesPerCm", "/cm"),
            Map.entry("MmPerS", "mm/s"),
            Map.entry("Ml", "mL"),
            Map.entry("Mg", "mg"),
            Map.entry("EnergyJ", "J"),
            Map.entry("powerW", "W"),
            Map.entry("TemperatureC", "Cel"),
            Map.entry("Points", "1"),
            Map.entry("Minutes", "min"),
            Map.entry("Mm", "mm"),
            Map.entry("MmHg", "mm[Hg]"),
            Map.entry("Cm", "cm"),
            Map.entry("Kg", "kg"),
            Map.entry("Years", "a"),
            Map.entry("Seconds", "s"),
            Map.entry("Percent", "%"),
            Map.entry("percent", "%"),
            Map.entry("Index", "1"));

    /** Whole numbers without a dimension. */
    private static final List<String> COUNTS =
            List.of("session", "cycles", "gasParts", "aliquots", "lesions", "phlebectomyIncisions");

    @Test
    void documentationExample_everyFaultAtOnceWithItsFileAndKey() {
        List<String> faults = new Planted()
                .change(WALL, "S-0901", "S-9901")
                .change("knowledge/posture.yaml", "low: 16", "low: 20")
                .change(LASER, "unit: W", "unit: kW")
                .change(SOURCES, "10.1016/j.ejvs.2021.12.024", "doi.org/10.1016")
                .change("knowledge/allergies.yaml", "says: polidocanol", "say: polidocanol")
                .faults();
        assertEquals(
                Set.of(
                        WALL + ": wall.share.whole.source: there is no source \"S-9901\"; did you mean \"S-0901\"?",
                        "knowledge/posture.yaml: posture.standing-to-lying.low:"
                                + " low, typical (or value) and high must be in rising order",
                        LASER + ": settings.powerW.unit: must be W, is kW",
                        SOURCES + ": S-0001.doi: \"doi.org/10.1016\" has not the shape of a DOI",
                        "knowledge/allergies.yaml: polidocanol.says: must be given",
                        "knowledge/allergies.yaml: polidocanol.say: is not a field of this object;"
                                + " did you mean \"says\"?"),
                Set.copyOf(faults));
    }

    @Test
    void shipped_hasNoFault() {
        assertEquals(List.of(), new Planted().faults());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    limits/wall.yaml       | change: "0012"     | change: "9912"        | wall.thick.over.change: there is no change record "9912"
                    limits/wall.yaml       | change: "0012"     | change: "0001"        | wall.thick.over.change: change 0001 does not list it under limits
                    limits/wall.yaml       | change: "0012"     | change: 12            | wall.thick.over.change: must be a text that is not empty, is 12
                    limits/wall.yaml       | source: S-0901     | source: S-901         | wall.share.whole.source: must be a source id such as S-0001, is "S-901"
                    limits/wall.yaml       | status: local      | status: locally       | wall.share.whole.status: "locally" is not a known word; did you mean "local"?
                    limits/wall.yaml       | since: 2026-01-01  | since: 2026-02-31     | wall.share.whole.since: must be a date such as 2026-01-31, is "2026-02-31"
                    limits/wall.yaml       | value: 0.9         | value: nine tenths    | wall.share.whole.value: must be a number, is "nine tenths"
                    limits/wall.yaml       | value: 0.9         | vaule: 0.9            | wall.share.whole.vaule: is not a field of this object; did you mean "value"?
                    limits/wall.yaml       | value: 0.9         | value: .nan           | :4: is not readable YAML: Malformed numeric value
                    limits/wall.yaml       | unit: "1"          | # no unit             | wall.share.whole.unit: must be given
                    rates.yaml             | measuredWith: "one laser, its wavelength and fibre not read", |  | rate.great-saphenous.laser.against-mechanochemical.measuredWith: a rate that stands for several techniques says with what it was measured
                    rates.yaml             | treated: 69        | treated: 0            | rate.great-saphenous.laser.against-mechanochemical.treated: must be more than 0
                    rates.yaml             | treated: 69        | low: 0.5              | rate.great-saphenous.laser.against-mechanochemical.treated: give either the number treated, or low and high
                    rates.yaml             | share: 0.913       | share: 1.2            | rate.great-saphenous.laser.against-mechanochemical.share: low, share and high must rise from 0 to 1
                    rates.yaml             | veins: [great-saphenous] | veins: [great-safenous] | rate.great-saphenous.laser.against-mechanochemical.veins: there is no vein "great-safenous"; did you mean "great-saphenous"?
                    rates.yaml             | laser-810-forward  | laser-811-forward     | rate.great-saphenous.laser.against-mechanochemical.techniques: there is no technique "laser-811-forward"; did you mean "laser-810-forward"?
                    rates.yaml             | change: "0030"     | change: "0001"        | rate.great-saphenous.laser.against-mechanochemical.change: change 0001 does not list it under limits
                    posture.yaml           | high: 24           | high: 18              | posture.standing-to-lying.low: low, typical (or value) and high must be in rising order
                    sources.yaml           | year: 2022         | year: 1022            | S-0001.year: 1022 is not a year of this literature
                    sources.yaml           | year: 2022         | year: 2022.5          | S-0001.year: must be a whole number, is 2022.5
                    sources.yaml           | read: secondary    | read: twice           | S-0001.read: "twice" is not a known word
                    measurements.yaml      | max: 120           | max: 0                | patient.ageYears.min: must be smaller than max
                    measurements.yaml      | patient.weightKg   | patient.wieghtKg      | patient.wieghtKg: there is no number of a case "patient.wieghtKg"; did you mean "patient.weightKg"?
                    measurements.yaml      | patient.weightKg   | patient.wieghtKg      | patient.weightKg: must be given
                    techniques/laser-1470-radial.yaml | id: laser-1470-radial | id: laser-1470 | must carry the name of its id, laser-1470
                    techniques/laser-1470-radial.yaml | family: heat  | family: hot    | family: "hot" is not a known word; did you mean "heat"?
                    techniques/laser-1470-radial.yaml | segment.course | segment.curse | needs: there is no field "segment.curse"; did you mean "segment.course"?
                    techniques/laser-1470-radial.yaml | drugs: []     | drugs: [polidocanole] | drugs: there is no sclerosant "polidocanole"; did you mean "polidocanol"?
                    techniques/laser-1470-radial.yaml | powerW:       | pulseSeconds:  | settings.leedJPerCm: a linear energy needs its power beside it
                    techniques/laser-1470-radial.yaml | powerW:       | pwoerW:        | settings.pwoerW: there is no setting "pwoerW"; did you mean "powerW"?
                    techniques/foam-sts.yaml | source: S-0900 | source: S-9900 | quantities.killDepthMm.source: there is no source "S-9900"
                    glossary.yaml          | kind: word         | kind: wrod            | fields.option.family.kind: "wrod" is not a known word; did you mean "word"?
                    glossary.yaml          | noun: the weight   | noun: the age         | fields.patient.weightKg.noun: is the noun of patient.ageYears too
                    glossary.yaml          | unit: mm           | unit: cm              | fields.segment.lumenDiameterMm.unit: must be mm, is cm
                    glossary.yaml          | unit: W            | unit: kW              | settings.powerW.unit: must be W, is kW
                    glossary.yaml          | near-nerve:        | verdict caution:      | findings.verdict caution: a finding is named in small letters
                    measurements.yaml      | unit: kg           | unit: "[lb_av]"       | patient.weightKg.unit: must be kg, is [lb_av]
                    techniques/foam-sts.yaml | unit: mm           | unit: cm              | quantities.killDepthMm.unit: must be mm, is cm
                    glossary.yaml          | unit: mm           | value: mm             | unit: a number needs its unit
                    """)
    void onePlantedFault_isNamedWithFileAndKey(String file, String old, String changed, String says) {
        String path = "knowledge/" + file;
        List<String> faults = new Planted().change(path, old, changed).faults();
        assertTrue(faults.stream().anyMatch(fault -> fault.startsWith(path) && fault.contains(says)), faults::toString);
    }

    @Test
    void linearEnergy_thatLeavesThePullbackOpen() {
        List<String> faults = new Planted()
                .change(LASER, "high: 12", "# no high")
                .change(LASER, "high: 80", "# no high")
                .faults();
        assertEquals(
                List.of(LASER + ": settings.leedJPerCm: no pullback follows:"
                        + " give both it and powerW a typical value, or low and high"),
                faults);
    }

    @Test
    void keyThatStandsTwice_inOneFile() {
        List<String> faults = new Planted()
                .change(WALL, "value: 0.9", "value: 0.9\n  value: 0.8")
                .faults();
        assertEquals(1, faults.size(), faults::toString);
        assertTrue(faults.get(0).startsWith(WALL + ":5: is not readable YAML: "), faults::toString);
    }

    @Test
    void idThatStandsTwice_inTwoFilesOfLimits() {
        Planted planted = new Planted();
        planted.add("knowledge/limits/wall-again.yaml", planted.bundle().texts().get(WALL));
        List<String> faults = planted.faults();
        assertEquals(
                List.of(
                        WALL
                                + ": wall.share.whole: \"wall.share.whole\" stands in knowledge/limits/wall-again.yaml too",
                        WALL + ": wall.thick.over: \"wall.thick.over\" stands in knowledge/limits/wall-again.yaml too"),
                faults);
    }

    @Test
    void idThatStandsTwice_inLimitsAndDoses() {
        Planted planted = new Planted();
        String limit = planted.bundle().texts().get(WALL);
        planted.add("knowledge/doses.yaml", "\n" + limit.substring(limit.indexOf("wall.thick.over:")));
        assertEquals(
                List.of("knowledge/doses.yaml: wall.thick.over: \"wall.thick.over\" stands in " + WALL + " too"),
                planted.faults());
    }

    @Test
    void entryWithoutAnything_isNotPassedOver() {
        assertEquals(
                List.of("knowledge/conditions.yaml: forgotten: must be an object, is empty"),
                new Planted().add("knowledge/conditions.yaml", "\nforgotten:\n").faults());
    }

    @Test
    void fileNobodyReads() {
        assertEquals(
                List.of("knowledge/limit/wall.yaml: is not a file the program knows"),
                new Planted().add("knowledge/limit/wall.yaml", "a: 1").faults());
    }

    @Test
    void brokenYaml_isOneFaultWithItsLine_andNoEchoOfWhatWouldHangOnIt() {
        List<String> faults =
                new Planted().replace(SOURCES, "S-0001:\n  cites: [ \"open\n").faults();
        assertEquals(1, faults.size(), faults::toString);
        assertTrue(faults.get(0).matches("knowledge/sources.yaml:\\d+: is not readable YAML: .*"), faults::toString);
    }

    @Test
    void emptyFile() {
        assertEquals(
                List.of(SOURCES + ": is empty"),
                new Planted().replace(SOURCES, "").faults());
    }

    @Test
    void missingFile() {
        assertEquals(
                List.of("knowledge/glossary.yaml: is missing"),
                new Planted().remove("knowledge/glossary.yaml").faults());
    }

    @Test
    void secondDocumentInAFile() {
        List<String> faults =
                new Planted().add(WALL, "\n---\nmore: { value: 1 }\n").faults();
        assertEquals(1, faults.size(), faults::toString);
        assertTrue(faults.get(0).startsWith(WALL), faults::toString);
    }

    @Test
    void group_withoutMembers() {
        Planted planted = new Planted();
        String change = changeFile(planted, "0002");
        planted.change(change, "limits: [", "limits: [nothing-here.*, ");
        assertEquals(List.of(change + ": limits: there is no quantity of the group nothing-here.*"), planted.faults());
    }

    @Test
    void changeRecord_numberSourcesAndAuthors() {
        Planted planted = new Planted();
        String change = changeFile(planted, "0002");
        planted.change(change, "S-0010", "S-9910")
                .change(change, "authors: [ { role: rule author, initials: AK } ]", "authors: []")
                .rename(change, "rules/changes/0099-renamed.yaml");
        assertEquals(
                Set.of(
                        "rules/changes/0099-renamed.yaml: must start with its number, 0002",
                        "rules/changes/0099-renamed.yaml: authors: at least one author must be named",
                        "rules/changes/0099-renamed.yaml: sources: there is no source \"S-9910\";"
                                + " did you mean \"S-0910\"?"),
                Set.copyOf(planted.faults()));
    }

    @Test
    void changeRecord_numberTwice() {
        Planted planted = new Planted();
        String change = changeFile(planted, "0002");
        planted.add("rules/changes/0002-again.yaml", planted.bundle().texts().get(change));
        assertEquals(
                List.of(change + ": number: \"0002\" stands in rules/changes/0002-again.yaml too"), planted.faults());
    }

    @Test
    void twoFieldsWithOneSentence() {
        List<String> faults = new Planted()
                .change("knowledge/glossary.yaml", "name: the relaxed wall", "name: the relaxed lumen")
                .faults();
        assertEquals(
                List.of("knowledge/glossary.yaml: fields.derived.relaxedWallMm:"
                        + " \"the relaxed lumen is\" already means another field"),
                faults);
    }

    @Test
    void yamlTags_makeNoObjects() {
        List<String> faults = new Planted()
                .change(WALL, "value: 0.9", "value: !!java.util.Date 0.9")
                .faults();
        assertEquals(
                List.of(WALL + ":4: the tag \"tag:yaml.org,2002:java.util.Date\" is not read; write the plain value"),
                faults);
    }

    @Test
    void everyNumberOfACaseHasARange_inTheUnitOfItsName() {
        Knowledge knowledge = Knowledge.of(Bundle.shipped());
        Map<String, String> units = knowledge.measurements().values().stream()
                .filter(measurement -> !measurement.path().startsWith(Knowledge.FOLLOW_UP))
                .filter(measurement -> !measurement.path().startsWith(Knowledge.DELIVERED))
                .collect(Collectors.toMap(
                        Measurement::path, measurement -> measurement.range().unit()));
        Map<Boolean, Set<String>> paths = units.keySet().stream()
                .collect(Collectors.partitioningBy(path -> path.startsWith(Knowledge.DELIVERED), Collectors.toSet()));
        assertEquals(Set.copyOf(CaseFile.NUMBERS), paths.get(false));
        units.forEach((path, unit) -> assertEquals(unitOf(path), unit, path));
    }

    @Test
    void unknownIds_areMisuse() {
        Knowledge knowledge = Knowledge.of(Bundle.shipped());
        assertThrows(IllegalArgumentException.class, () -> knowledge.quantity("nothing.here"));
        assertThrows(IllegalArgumentException.class, () -> knowledge.technique("nothing"));
        assertThrows(IllegalArgumentException.class, () -> knowledge.source("S-9999"));
    }

    private static String unitOf(String path) {
        if (COUNTS.stream().anyMatch(path::endsWith)) {
            return "1";
        }
        return UNIT_OF_ENDING.entrySet().stream()
                .filter(ending -> path.endsWith(ending.getKey()))
                .sorted(Comparator.comparingInt(ending -> -ending.getKey().length()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse("no known ending");
    }

    private static String changeFile(Planted planted, String number) {
        return planted.bundle().under("rules/changes/" + number, ".yaml").firstKey();
    }
}
