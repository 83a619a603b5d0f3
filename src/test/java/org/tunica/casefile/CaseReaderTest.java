package org.tunica.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tunica.CaseTree;

class CaseReaderTest {
    private static final KnownWords KNOWN = new FewWords();
    private static final String SEGMENT = "limbs.0.segments.0.";

    @Test
    void documentationExample_everyFaultAtOnceWithItsPathAndTheNearestWord() {
        String broken = """
                {
                  "format": "tunica-case/2",
                  "patient": { "ageYears": 160, "sex": "femal", "wieghtKg": 70, "allergies": ["polidocanole"] },
                  "room": { "tiltTable": "yes", "sclerosants": [ { "drug": "polidocanol" } ] },
                  "limbs": [
                    { "side": "left",
                      "segments": [
                        { "ref": "L1", "vein": "great-saphenos", "level": "thigh", "lengthCm": 30, "straightCm": 34 },
                        { "ref": "L1", "vein": "tributary", "level": "knee" } ] },
                    { "side": "left", "segments": [] } ]
                }
                """;
        assertEquals(
                List.of(
                        "$.format: must be \"tunica-case/1\", is \"tunica-case/2\"",
                        "$.caseRef: must be given",
                        "$.patient.ageYears: must be 0 to 120 years, is 160",
                        "$.patient.sex: \"femal\" is not a known word; did you mean \"female\"?;"
                                + " known words: female, male, other",
                        "$.patient.allergies[0]: \"polidocanole\" is not a known word; did you mean \"polidocanol\"?;"
                                + " known words: cyanoacrylate, polidocanol",
                        "$.patient.wieghtKg: is not a field of this object; did you mean \"weightKg\"?",
                        "$.room.sclerosants[0].percent: must be given",
                        "$.room.tiltTable: must be true or false, is \"yes\"",
                        "$.limbs[0].segments[0].vein: \"great-saphenos\" is not a known word;"
                                + " did you mean \"great-saphenous\"?; known words: great-saphenous, small-saphenous,"
                                + " anterior-accessory, posterior-accessory, thigh-extension, tributary, perforator,"
                                + " recurrent-channel",
                        "$.limbs[0].segments[0].straightCm: the straight part cannot be longer than lengthCm",
                        "$.limbs[0].segments[1].ref: \"L1\" stands twice in the case",
                        "$.limbs[1].side: the left side stands twice; put its segments together",
                        "$.limbs[1].segments: must hold at least one entry"),
                faults(broken.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void read_soundLeg() {
        CaseFile read = read(sound());
        Segment segment = read.limbs().get(0).segments().get(0);
        assertEquals("sound-leg", read.caseRef());
        assertEquals(Segment.Vein.GREAT_SAPHENOUS, segment.vein());
        assertEquals(OptionalDouble.of(0.5), segment.wallThicknessMm());
        assertEquals(
                Optional.of(Segment.Measured.Posture.STANDING),
                segment.measured().posture());
        assertEquals(Optional.of(Set.of()), read.patient().allergies());
    }

    @Test
    void read_leastCase_everythingElseIsUnknown() {
        CaseFile read = CaseFile.read("case", """
                { "format": "tunica-case/1", "caseRef": "x",
                  "limbs": [ { "side": "right", "segments": [ { "ref": "R1", "vein": "tributary", "level": "knee" } ] } ] }
                """.getBytes(StandardCharsets.UTF_8), KNOWN);
        assertEquals(Optional.empty(), read.patient().pregnant());
        assertEquals(Optional.empty(), read.room().devices());
        assertEquals(
                OptionalDouble.empty(),
                read.limbs().get(0).segments().get(0).nerve().gapMm());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "patient.ageYears",
                "patient.pregnant",
                "patient.canLie",
                "patient.allergies",
                "room.devices",
                "room.sclerosants",
                "room.tumescent",
                "limbs.0.ceapClass",
                SEGMENT + "wallThicknessMm",
                SEGMENT + "measured",
                SEGMENT + "nerve"
            })
    void nullReadsLikeAnAbsentField(String path) {
        CaseTree absent = sound().set(path, null);
        CaseTree isNull = sound().set(path, JsonText.parse("null", "null".getBytes(StandardCharsets.UTF_8)));
        assertEquals(read(absent), read(isNull));
    }

    @Test
    void costClassesAreReadByTechnique() {
        Room.CostClasses classes = read(sound().set("room.costClasses.low", List.of("adhesive"))
                        .set("room.costClasses.high", List.of("laser-1470-radial")))
                .room()
                .costClasses()
                .orElseThrow();
        assertEquals(Optional.of(Room.CostClass.LOW), classes.of("adhesive"));
        assertEquals(Optional.of(Room.CostClass.HIGH), classes.of("laser-1470-radial"));
        assertEquals(Optional.empty(), classes.of("steam"));
        assertEquals(Optional.empty(), read(sound()).room().costClasses());
    }

    @Test
    void everyFaultOfCostClassesAtOnce() {
        CaseTree tree = sound().set("room.costClasses.low", List.of("adhesive", "adhesif"))
                .set("room.costClasses.middling", "adhesive")
                .set("room.costClasses.high", List.of("adhesive"))
                .set("room.costClasses.midling", List.of());
        assertEquals(
                List.of(
                        "$.room.costClasses.low[1]",
                        "$.room.costClasses.middling",
                        "$.room.costClasses.high",
                        "$.room.costClasses.midling"),
                faults(tree.bytes()).stream().map(says -> says.split(": ")[0]).toList());
        assertTrue(faults(tree.bytes())
                .contains("$.room.costClasses.high: \"adhesive\" stands in another class already;"
                        + " a technique has one cost class"));
    }

    @Test
    void zeroIsAMeasurement_whereTheRangeAllowsIt() {
        Segment segment = read(sound().set(SEGMENT + "nerve.gapMm", 0).set(SEGMENT + "topToDeepJunctionCm", 0))
                .limbs()
                .get(0)
                .segments()
                .get(0);
        assertEquals(OptionalDouble.of(0), segment.nerve().gapMm());
        assertEquals(OptionalDouble.of(0), segment.topToDeepJunctionCm());
        assertFault(sound().set(SEGMENT + "wallThicknessMm", 0), "$.limbs[0].segments[0].wallThicknessMm");
    }

    @ParameterizedTest
    @CsvSource({"0.05, true", "5, true", "0.0499, false", "5.001, false", "-1, false"})
    void rangeHoldsItsEnds(double wallThicknessMm, boolean accepted) {
        CaseTree tree = sound().set(SEGMENT + "wallThicknessMm", wallThicknessMm);
        assertEquals(accepted, faults(tree.bytes()).isEmpty());
    }

    @Test
    void outOfRange_namesTheUnit() {
        assertEquals(
                List.of("$.limbs[0].segments[0].wallThicknessMm: must be 0.05 to 5 mm, is 62"),
                faults(sound().set(SEGMENT + "wallThicknessMm", 62)
                        .set(SEGMENT + "lumenDiameterMm", 100)
                        .bytes()));
        assertEquals(
                List.of("$.limbs[0].ankleBrachialIndex: must be 0 to 2.5, is 102"),
                faults(sound().set("limbs.0.ankleBrachialIndex", 102).bytes()));
    }

    @Test
    void mainOutflowOfOneLeg_mustStandInAWholeHistory() {
        CaseTree tree = sound().set("limbs.0.trunkIsMainOutflow", true).set("patient.conditions", List.of());
        assertEquals(
                List.of("$.limbs[0].trunkIsMainOutflow: is true, while patient.conditions does not list"
                        + " trunk-is-main-outflow"),
                faults(tree.bytes()));
        assertEquals(List.of(), faults(tree.set("patient.conditions", null).bytes()));
        assertEquals(
                List.of(),
                faults(tree.set("patient.conditions", List.of("trunk-is-main-outflow"))
                        .bytes()));
        assertEquals(
                List.of(),
                faults(tree.set("patient.conditions", List.of())
                        .set("limbs.0.trunkIsMainOutflow", false)
                        .bytes()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    patient.wieghtKg        | 70          | $.patient.wieghtKg        | did you mean "weightKg"?
                    remarks                 | "none"      | $.remarks                 | is not a field of this object
                    patient.mobility        | "walk"      | $.patient.mobility        | did you mean "walks"?
                    limbs.0.side            | "Left"      | $.limbs[0].side           | did you mean "left"?
                    patient.weightKg        | "70"        | $.patient.weightKg        | must be a number, is "70"
                    patient.weightKg        | [70]        | $.patient.weightKg        | must be a number, is a list
                    patient.pregnant        | 0           | $.patient.pregnant        | must be true or false, is 0
                    patient.canLie          | true        | $.patient.canLie          | must be an object, is true
                    patient.conditions      | "none"      | $.patient.conditions      | must be a list, is "none"
                    patient.conditions      | [null]      | $.patient.conditions[0]   | must be a text, is null
                    patient.conditions      | ["cancer"]  | $.patient.conditions[0]   | is not a known word
                    room.devices            | ["adhesive","adhesive"] | $.room.devices[1] | "adhesive" stands twice in the list
                    room.foamGas            | ["oxygen"]  | $.room.foamGas[0]         | known words: air, co2-o2
                    room.sclerosants        | [3]         | $.room.sclerosants[0]     | must be an object, is 3
                    importance              | ["durability","durability"] | $.importance[1] | "durability" stands twice in the list
                    importance              | ["durablity"] | $.importance[0]         | did you mean "durability"?
                    importance              | "durability" | $.importance             | must be a list, is "durability"
                    format                  | 1           | $.format                  | must be a text
                    format                  | " "         | $.format                  | must be a text that is not empty
                    caseRef                 | "Anna Muster" | $.caseRef               | 1 to 64 letters
                    caseRef                 | "-7"        | $.caseRef                 | starting with a letter or digit
                    limbs                   | []          | $.limbs                   | must hold at least one entry
                    limbs                   | null        | $.limbs                   | must be given
                    limbs                   | {}          | $.limbs                   | must be a list, is an object
                    limbs                   | [7]         | $.limbs[0]                | must be an object, is 7
                    patient.ageYears        | 1e999       | $.patient.ageYears        | must be a finite number
                    """)
    void oneFault_oneLine(String path, String json, String place, String says) {
        CaseTree tree = sound().set(path, JsonText.parse("value", json.getBytes(StandardCharsets.UTF_8)));
        List<String> faults = faults(tree, json);
        assertEquals(1, faults.size(), faults::toString);
        assertTrue(faults.get(0).startsWith(place + ": "), faults::toString);
        assertTrue(faults.get(0).contains(says), faults::toString);
    }

    @ParameterizedTest
    @ValueSource(strings = {"format", "caseRef", "limbs"})
    void missingAtTheTop(String field) {
        assertEquals(
                List.of("$." + field + ": must be given"),
                faults(sound().set(field, null).bytes()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"side", "segments"})
    void missingInALimb(String field) {
        assertEquals(
                List.of("$.limbs[0]." + field + ": must be given"),
                faults(sound().set("limbs.0." + field, null).bytes()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"ref", "vein", "level"})
    void missingInASegment(String field) {
        assertEquals(
                List.of("$.limbs[0].segments[0]." + field + ": must be given"),
                faults(sound().set(SEGMENT + field, null).bytes()));
    }

    @Test
    void refTwice_overBothLegs() {
        CaseTree tree = sound();
        tree.set("limbs", List.of(limb("left", "X1"), limb("right", "X1")));
        assertEquals(List.of("$.limbs[1].segments[0].ref: \"X1\" stands twice in the case"), faults(tree.bytes()));
    }

    @Test
    void misspeltSide_isNoSecondLeftLeg() {
        CaseTree first = sound().set("limbs", List.of(limb("rigth", "X1"), limb("left", "X2")));
        assertEquals(1, faults(first.bytes()).size());
        CaseTree tree = sound().set("limbs", List.of(limb("left", "X1"), limb("rigth", "X2")));
        assertEquals(
                List.of("$.limbs[1].side: \"rigth\" is not a known word; did you mean \"right\"?;"
                        + " known words: left, right"),
                faults(tree.bytes()));
    }

    @Test
    void mostSegments_andOneMore() {
        List<Map<String, String>> most = Collections.nCopies(
                CaseFile.MOST_SEGMENTS + 1, Map.of("ref", "X1", "vein", "tributary", "level", "knee"));
        CaseTree tree = sound().set("limbs.0.segments", most);
        assertEquals(List.of("$.limbs[0].segments: holds 41 segments; at most 40 are read"), faults(tree.bytes()));
    }

    @Test
    void wallThickerThanLumen_onlyWhenSurelyOutOfSpasm() {
        CaseTree tree = sound().set(SEGMENT + "lumenDiameterMm", 2).set(SEGMENT + "wallThicknessMm", 2.5);
        assertFault(tree, "$.limbs[0].segments[0].wallThicknessMm");
        assertEquals(
                List.of(),
                faults(tree.copy().set(SEGMENT + "measured.inSpasm", true).bytes()));
        assertEquals(
                List.of(),
                faults(tree.copy().set(SEGMENT + "measured.inSpasm", null).bytes()));
        assertEquals(
                List.of(),
                faults(tree.copy().set(SEGMENT + "wallThicknessMm", 2).bytes()));
    }

    @Test
    void relaxedNarrowerThanInSpasm() {
        CaseTree tree = sound().set(SEGMENT + "measured.inSpasm", true)
                .set(SEGMENT + "lumenDiameterMm", 3)
                .set(SEGMENT + "measured.relaxedLumenDiameterMm", 2.9);
        assertFault(tree, "$.limbs[0].segments[0].measured.relaxedLumenDiameterMm");
        assertEquals(
                List.of(),
                faults(tree.copy()
                        .set(SEGMENT + "measured.relaxedLumenDiameterMm", 3)
                        .bytes()));
    }

    @Test
    void rootThatIsNoObject_isOneFault() {
        assertEquals(List.of("$: must be an object, is a list"), faults("[]".getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void faultNeverCarriesControlCharacters() {
        String sly =
                "{\"format\": \"x\\u001b[31m\\nno faults\", \"\\u202edas\": 1, \"limbs\": [ { \"side\": \"\\u001b\" } ] }";
        faults(sly.getBytes(StandardCharsets.UTF_8))
                .forEach(fault -> assertTrue(fault.codePoints().noneMatch(CaseReaderTest::notPrinting), fault));
    }

    @Test
    void message_countsAndListsTheFaults() {
        FaultyInput faulty = assertThrows(
                FaultyInput.class, () -> read(sound().set("caseRef", null).set("format", null)));
        assertEquals("case: 2 faults\n  $.format: must be given\n  $.caseRef: must be given", faulty.getMessage());
    }

    private static boolean notPrinting(int codePoint) {
        return Character.isISOControl(codePoint) || Character.getType(codePoint) == Character.FORMAT;
    }

    private static Map<String, Object> limb(String side, String ref) {
        return Map.of("side", side, "segments", List.of(Map.of("ref", ref, "vein", "tributary", "level", "knee")));
    }

    private static CaseTree sound() {
        return CaseTree.soundLeg().set("room.devices", List.of("adhesive"));
    }

    private static CaseFile read(CaseTree tree) {
        return CaseFile.read("case", tree.bytes(), KNOWN);
    }

    private static void assertFault(CaseTree tree, String place) {
        List<String> faults = faults(tree.bytes());
        assertEquals(1, faults.size(), faults::toString);
        assertTrue(faults.get(0).startsWith(place + ": "), faults::toString);
    }

    /** The tree writes an infinite number as a text, so the number goes in by hand. */
    private static List<String> faults(CaseTree tree, String json) {
        String text = new String(tree.bytes(), StandardCharsets.UTF_8);
        return faults(
                (json.equals("1e999") ? text.replace("\"Infinity\"", json) : text).getBytes(StandardCharsets.UTF_8));
    }

    /** The faults of a case, none when it reads. */
    private static List<String> faults(byte[] json) {
        try {
            CaseFile.read("case", json, KNOWN);
            return List.of();
        } catch (FaultyInput e) {
            return e.faults().stream().map(Fault::toString).toList();
        }
    }

    @Test
    void aMaleSaidToBePregnantIsRefused_forRulesSpareMenTheQuestion() {
        CaseTree tree = CaseTree.soundLeg()
                .set("room", null)
                .set("patient.sex", "male")
                .set("patient.pregnant", true)
                .set("patient.breastfeeding", true)
                .set("room.devices", null);
        FaultyInput faulty = assertThrows(FaultyInput.class, () -> CaseFile.read("case", tree.bytes(), KNOWN));
        assertEquals(
                List.of("$.patient.pregnant", "$.patient.breastfeeding"),
                faulty.faults().stream().map(Fault::place).toList());
    }
}
