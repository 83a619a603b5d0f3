package org.tunica.treatment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tunica.treatment.Delivered.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.CaseTree;
import org.tunica.Contract;
import org.tunica.casefile.Room;
import org.tunica.knowledge.Knowledge;
import org.tunica.session.Position;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class DeliveredReaderTest {
    private static final JsonMapper JSON = new JsonMapper();
    private static final String HEAT = "segments.0.heat";

    /** One laser segment of 38 cm, nothing more. */
    private static CaseTree laser(String heat) {
        return CaseTree.of(
                ("{\"format\":\"tunica-delivered/1\",\"caseRef\":\"larkspur-01\",\"segments\":[{\"ref\":\"L1\","
                                + "\"technique\":\"laser-1470-radial\",\"treatedLengthCm\":38,\"heat\":" + heat + "}]}")
                        .getBytes());
    }

    @Test
    void documentationExample_aRecordIsReadWhole() {
        DeliveredSession read = Delivered.read(Delivered.demo("both-legs-many-segments"));
        assertEquals(OptionalInt.of(1), read.session());
        assertEquals(Optional.of("2026-03-09"), read.date());
        assertEquals(6, read.segments().size());
        DeliveredSegment first = read.segments().get(0);
        assertEquals(Optional.of(Position.SUPINE_HEAD_DOWN), first.position());
        assertEquals(OptionalDouble.of(81), first.heat().orElseThrow().leedJPerCm());
        DeliveredSegment.Sclerosant foam = read.segments().get(1).sclerosant().orElseThrow();
        assertEquals(Optional.of(Room.SclerosantDrug.POLIDOCANOL), foam.drug());
        assertEquals(OptionalDouble.of(6), foam.foamMl());
        assertTrue(read.segments().get(5).notDone().isPresent());
    }

    @Test
    void everythingThatMayBeUnknown_isUnknownWhenAbsent() {
        DeliveredSession read = Delivered.read(laser("null"));
        DeliveredSegment segment = read.segments().get(0);
        assertEquals(Optional.empty(), segment.heat());
        assertEquals(Optional.empty(), segment.incidents());
        assertEquals(Optional.empty(), segment.closingDuplex().deepVeinOpen());
        assertEquals(Optional.empty(), read.consent());
        assertEquals(OptionalDouble.empty(), read.totals().foamMl());
        assertEquals(Optional.empty(), read.aftercare().compression());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"powerW":10,"heatingSeconds":266,"totalEnergyJ":3000} | the energy of 3000 J differs from power x time, 10 W x 266 s = 2660 J, by 12.8 %; at most 2 % is accepted
            {"powerW":10,"pullbackSecondsPerCm":7,"leedJPerCm":80} | the linear energy of 80 J/cm differs from power x pullback, 10 W x 7 s/cm = 70 J/cm, by 14.3 %; at most 2 % is accepted
            {"powerW":10,"leedJPerCm":70,"totalEnergyJ":2000}      | the energy of 2000 J differs from linear energy x length, 70 J/cm x 38 cm = 2660 J, by 24.8 %; at most 2 % is accepted
            {"pullbackSecondsPerCm":7,"pullbackMmPerS":2}          | the pullback of 7 s/cm differs from 2 mm/s, which is 5 s/cm, by 40 %; at most 2 % is accepted
            {"powerW":10,"pullbackSecondsPerCm":7,"heatingSeconds":200} | the time of 200 s differs from pullback x length, 7 s/cm x 38 cm = 266 s, by 24.8 %; at most 2 % is accepted
            """)
    void recordThatContradictsItself_isRefusedWithBothNumbers(String heat, String says) {
        assertTrue(
                faults(laser(heat)).contains("$.segments[0].heat: " + says),
                () -> faults(laser(heat)).toString());
    }

    @ParameterizedTest
    @CsvSource({"2660, true", "2713.2, true", "2713.3, false", "2606.8, true", "2606.7, false"})
    void twoPerCent_isTheLine(double energyJ, boolean accepted) { // 10 W x 266 s = 2660 J; definition of this project
        CaseTree tree = laser("{\"powerW\":10,\"heatingSeconds\":266,\"totalEnergyJ\":" + energyJ + "}");
        assertEquals(accepted, faults(tree).isEmpty(), () -> faults(tree).toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"leedJPerCm":70}                                | refused
            {"leedJPerCm":70,"totalEnergyJ":2660}            | refused
            {"leedJPerCm":70,"powerW":10}                    | read
            {"leedJPerCm":70,"pullbackMmPerS":2}             | read
            {"leedJPerCm":70,"heatingSeconds":266}           | read
            """)
    void linearEnergyWithoutPowerOrPullback_isRefused(String heat, String outcome) {
        List<String> expected = outcome.equals("read")
                ? List.of()
                : List.of("$.segments[0].heat.leedJPerCm: says nothing without power or pullback;"
                        + " give one of them and the other is computed");
        assertEquals(expected, faults(laser(heat)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            straight-thigh-trunk | caseRef                  | "a name"      | $.caseRef: must be 1 to 64 letters
            straight-thigh-trunk | format                   | "x"           | $.format: must be
            straight-thigh-trunk | date                     | "2026-02-30"  | $.date: is no day of the calendar
            straight-thigh-trunk | date                     | "today"       | $.date: must be a day
            straight-thigh-trunk | people.0.initials        | "Anna"        | $.people[0].initials: must be 1 to 4 capital letters
            straight-thigh-trunk | segments.0.technique     | "laser"       | $.segments[0].technique: "laser" is not a known word
            straight-thigh-trunk | segments.0.technique     | null          | $.segments[0].technique: must be given
            straight-thigh-trunk | segments.0.technique     | "adhesive"    | $.segments[0].heat: does not go with the technique adhesive
            straight-thigh-trunk | segments.0.notDone       | "why"         | $.segments[0].notDone: says that nothing was done
            straight-thigh-trunk | segments.0.treatedLengthCm | 30          | $.segments[0].stretches: the lengths of the stretches add up to 38 cm, treatedLengthCm says 30 cm
            straight-thigh-trunk | segments.0.heat.totalEnergyJ | 2000      | $.segments[0].stretches: the energies of the stretches add up to 2400 J, heat.totalEnergyJ says 2000 J
            straight-thigh-trunk | segments.0.stretches.0.lengthCm | null   | $.segments[0].stretches[0].lengthCm: must be given
            straight-thigh-trunk | segments.0.closingDuplex.closedLengthCm | 39 | $.segments[0].closingDuplex.closedLengthCm: more cannot be closed
            straight-thigh-trunk | totals.lidocaineMg       | 500           | $.totals.lidocaineMg: says 500 mg, the segments add up to 350 mg
            both-legs-many-segments | totals.foamMl         | 9             | $.totals.foamMl: says 9 mL, the segments add up to 11 mL
            both-legs-many-segments | segments.1.sclerosant.liquidMl | 3    | $.segments[1].sclerosant: liquid and gas make 15 mL, foamMl says 6 mL
            both-legs-many-segments | segments.1.ref        | "L1"          | $.segments[1].ref: "L1" stands twice
            both-legs-many-segments | segments.0.heat.powerW | 900          | $.segments[0].heat.powerW: must be 0.1 to 150 W, is 900
            both-legs-many-segments | segments.0.sclerosant | {}            | $.segments[0].sclerosant: does not go with the technique
            large-trunk-anticoagulated | segments.0.stretches.0.cycles | 1.5 | $.segments[0].stretches[0].cycles: must be a whole number
            """)
    void oneMistake_isNamedWithItsPlace(String demo, String path, String value, String fault) {
        CaseTree tree = Delivered.demo(demo).set(path, JSON.readTree(value));
        assertTrue(
                faults(tree).stream().anyMatch(says -> says.startsWith(fault)),
                () -> faults(tree).toString());
    }

    /** Every number a record may hold has a range, and every range a number. */
    @Test
    void everyNumber_hasItsPlausibleRange() {
        Set<String> ranges = Delivered.TUNICA.knowledge().measurements().keySet().stream()
                .filter(path -> path.startsWith(Knowledge.DELIVERED))
                .collect(Collectors.toSet());
        List<JsonNode> numbers = new ArrayList<>();
        numbers(JSON.readTree(Delivered.TUNICA.schema(Contract.DELIVERED)), numbers);
        numbers.forEach(number -> assertTrue(number.has("minimum") && number.has("maximum"), number::toString));
        assertEquals(ranges.size(), numbers.size());
    }

    private static void numbers(JsonNode node, List<JsonNode> found) {
        if (node.has("anyOf")
                && Set.of("number", "integer").contains(node.at("/anyOf/1/type").asString(""))) {
            found.add(node);
        } else {
            node.forEach(child -> numbers(child, found));
        }
    }

    @Test
    void allFaults_comeAtOnce() {
        CaseTree tree =
                laser("{\"leedJPerCm\":70,\"powerw\":10}").set("consent", "yes").set("segments.0.position", "standing");
        assertEquals(4, faults(tree).size(), () -> faults(tree).toString());
    }

    @Test
    void oneStretchOfTwoWithUnknownEnergy_isNotHeldAgainstTheSum() {
        CaseTree tree = Delivered.demo("straight-thigh-trunk").set("segments.0.stretches.1.leedJPerCm", null);
        assertEquals(List.of(), faults(tree));
    }

    @Test
    void anElementThatRests_isNotHeldAgainstPullback() {
        CaseTree tree = laser("{\"cycles\":2,\"totalEnergyJ\":3000,\"heatingSeconds\":120}")
                .set("segments.0.technique", "rf-segmental-7cm");
        assertEquals(List.of(), faults(tree));
        assertEquals(
                OptionalDouble.empty(),
                HeatBalance.of(Delivered.read(tree).segments().get(0).heat().orElseThrow(), OptionalDouble.of(38), 0.02)
                        .value(HeatBalance.Number.LINEAR_ENERGY));
        assertTrue(Delivered.read(tree.set(HEAT, null)).segments().get(0).heat().isEmpty());
    }
}
