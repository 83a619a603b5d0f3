package org.tunica.invented;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.tunica.Tunica;
import org.tunica.casefile.Patient;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Distribution;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.SettingRange;
import org.tunica.knowledge.Technique;
import org.tunica.pastcases.PastCase;
import org.tunica.treatment.DeliveredHeat;
import org.tunica.treatment.DeliveredSegment;
import org.tunica.treatment.DeliveredSession;

/** A specialist finds nothing in made-up cases that nobody would have done. */
class InventedSenseTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final Knowledge KNOWLEDGE = TUNICA.knowledge();
    private static final List<PastCase> CASES =
            TUNICA.pastCases().inventedLibrary(99).cases(6_000).toList();

    private record Done(PastCase of, Segment segment, DeliveredSegment given, Technique technique) {
        boolean family(Family family) {
            return technique.family() == family;
        }

        boolean byCatheter() {
            return family(Family.HEAT) || family(Family.MECHANOCHEMICAL) || family(Family.ADHESIVE);
        }
    }

    private static final List<Done> DONE =
            CASES.stream().flatMap(one -> done(one).stream()).toList();

    private static List<Done> done(PastCase one) {
        Map<String, Segment> segments = one.caseFile().limbs().stream()
                .flatMap(limb -> limb.segments().stream())
                .collect(Collectors.toMap(Segment::ref, Function.identity()));
        return one.delivered().stream()
                .flatMap(session -> session.segments().stream())
                .map(given -> new Done(
                        one,
                        segments.get(given.ref()),
                        given,
                        KNOWLEDGE.technique(given.technique().orElseThrow())))
                .toList();
    }

    @Test
    void everyCase_isReadBackUnchanged() {
        CASES.stream().limit(3_000).forEach(one -> {
            byte[] line = TUNICA.pastCases().toLine(one).getBytes(StandardCharsets.UTF_8);
            assertEquals(one, TUNICA.pastCases().readPastCase(one.id(), line));
        });
    }

    @Test
    void catheter_goesIntoAVeinThatTakesIt() {
        for (Done done : DONE) {
            if (done.byCatheter()) {
                double lumen = done.segment()
                        .measured()
                        .relaxedLumenDiameterMm()
                        .orElse(done.segment().lumenDiameterMm().orElseThrow());
                assertTrue(lumen >= 3, () -> done.given().technique() + " in " + done.segment());
                assertTrue(done.segment().straightCm().orElseThrow() >= 5, () -> "" + done.segment());
                assertTrue(!done.segment().course().equals(Optional.of(Segment.Course.VERY_WINDING)));
                assertEquals(Optional.of(Segment.Thrombus.NONE), done.segment().thrombus());
                assertTrue(done.segment().vein() != Segment.Vein.PERFORATOR);
            }
        }
    }

    @Test
    void lengths_fitTheVein() {
        for (Done done : DONE) {
            double cm = done.given().treatedLengthCm().orElseThrow();
            assertTrue(cm <= done.segment().lengthCm().orElseThrow(), () -> "" + done.given());
            assertTrue(cm >= 1, () -> "" + done.given());
            assertTrue(done.segment().vein() != Segment.Vein.PERFORATOR || cm <= 5);
        }
    }

    @Test
    void nobodyIsGivenWhatTheyAreAllergicTo() {
        for (Done done : DONE) {
            Set<String> allergies = done.of().caseFile().patient().allergies().orElseThrow();
            done.given()
                    .sclerosant()
                    .ifPresent(drug -> assertTrue(
                            !allergies.contains(drug.drug().orElseThrow().word()), () -> allergies + " " + drug));
            assertTrue(!(done.family(Family.ADHESIVE) && allergies.contains("cyanoacrylate")));
            assertTrue(done.given().tumescent().isEmpty() || !allergies.contains("amide-anaesthetic"));
        }
    }

    @Test
    void conditionsThatForbidAWay() {
        for (Done done : DONE) {
            Set<String> conditions = done.of().caseFile().patient().conditions().orElseThrow();
            assertTrue(!(done.family(Family.FOAM) && conditions.contains("right-to-left-shunt-symptomatic")));
            assertTrue(!(done.family(Family.FOCUSED_ULTRASOUND) && conditions.contains("metal-in-beam-path")));
            assertTrue(!(done.technique().id().startsWith("rf-") && conditions.contains("pacemaker")));
        }
        for (PastCase one : CASES) {
            Patient patient = one.caseFile().patient();
            assertTrue(!patient.pregnant().orElse(false));
            assertTrue(!patient.conditions().orElseThrow().contains("skin-infection-local"));
        }
    }

    @Test
    void doses_stayWithinTheCeilingsOfASession() {
        for (PastCase one : CASES) {
            double mostKg =
                    one.weightBandKg().map(band -> band.to().orElse(400)).orElse(400);
            for (DeliveredSession session : one.delivered()) {
                assertTrue(session.segments().stream()
                                .flatMap(segment -> segment.sclerosant().stream())
                                .mapToDouble(drug -> drug.foamMl().orElse(0))
                                .sum()
                        <= 10);
                double polidocanolMg = session.segments().stream()
                        .flatMap(segment -> segment.sclerosant().stream())
                        .filter(drug -> drug.drug().orElseThrow().word().equals("polidocanol"))
                        .mapToDouble(drug ->
                                drug.liquidMl().orElseThrow() * drug.percent().orElseThrow() * 10)
                        .sum();
                assertTrue(polidocanolMg <= 2 * mostKg, () -> polidocanolMg + " mg in " + one.weightBandKg());
            }
        }
    }

    @Test
    void settings_areCustomary() {
        for (Done done : DONE) {
            done.given().heat().ifPresent(heat -> customary(done, heat));
            done.given()
                    .stretches()
                    .ifPresent(stretches -> stretches.forEach(heat -> {
                        within(done, "cyclesPerStretch", heat.cycles().orElseThrow());
                        within(
                                done,
                                "elementTemperatureC",
                                heat.elementTemperatureC().orElseThrow());
                    }));
            assertEquals(
                    done.family(Family.HEAT),
                    done.given().heat().isPresent() || done.given().stretches().isPresent());
        }
    }

    private static void customary(Done done, DeliveredHeat heat) {
        heat.powerW().ifPresent(power -> within(done, "powerW", power));
        heat.leedJPerCm().ifPresent(energy -> {
            double product =
                    heat.powerW().orElseThrow() * heat.pullbackSecondsPerCm().orElseThrow();
            assertEquals(product, energy, 0.06, "energy without its power and pullback");
            assertTrue(energy <= KNOWLEDGE.value("heat.setting.energy.max"));
            assertTrue(heat.pullbackSecondsPerCm().orElseThrow() <= KNOWLEDGE.value("heat.setting.pullback.max"));
        });
        heat.pulsesPerCm().ifPresent(pulses -> within(done, "pulsesPerCm", pulses));
    }

    private static void within(Done done, String setting, double value) {
        SettingRange range = done.technique().settings().get(setting);
        if (range != null) {
            assertTrue(
                    value >= range.low().orElseThrow() && value <= range.high().orElseThrow(),
                    () -> setting + " " + value + " of " + done.technique().id());
        }
    }

    @Test
    void techniqueIsInTheRoom() {
        for (Done done : DONE) {
            assertTrue(done.of()
                    .caseFile()
                    .room()
                    .devices()
                    .orElseThrow()
                    .contains(done.technique().id()));
        }
    }

    /** Every technique and every vein occurs, or nothing could be compared with it. */
    @Test
    void everythingOccurs() {
        assertEquals(
                KNOWLEDGE.techniqueIds(),
                DONE.stream().map(done -> done.technique().id()).collect(Collectors.toSet()));
        assertEquals(
                Set.of(Segment.Vein.values()),
                DONE.stream().map(done -> done.segment().vein()).collect(Collectors.toSet()));
    }

    /** A number that nothing is drawn from would be one somebody believes to shape the cases. */
    @Test
    void everyDistributionNamed_isDrawnFrom() throws ReflectiveOperationException {
        Set<Object> asked = new HashSet<>();
        Map<String, Distribution> watched = new HashMap<>(KNOWLEDGE.invented()) {
            @Override
            public Distribution get(Object id) {
                asked.add(id);
                return super.get(id);
            }
        };
        new InventedLibrary(with(watched), 1);
        assertEquals(KNOWLEDGE.invented().keySet(), asked);
    }

    private static Knowledge with(Map<String, Distribution> invented) throws ReflectiveOperationException {
        RecordComponent[] components = Knowledge.class.getRecordComponents();
        Object[] values = new Object[components.length];
        Class<?>[] types = new Class<?>[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
            values[i] = components[i].getName().equals("invented")
                    ? invented
                    : components[i].getAccessor().invoke(KNOWLEDGE);
        }
        return Knowledge.class.getConstructor(types).newInstance(values);
    }
}
