package org.tunica.couch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tunica.CaseTree;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.JsonText;

/** The form holds whatever a case can hold, asks for it under its place, and loses nothing of what was typed. */
class CaseFormTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final CaseAsks ASKS = CaseAsks.of(TUNICA.knowledge());

    @Test
    void everyDemoCase_comesBackFromItsFormAsItWas() throws Exception {
        for (Path file : CaseTree.demoFiles()) {
            byte[] json = Files.readAllBytes(file);
            assertEquals(TUNICA.readCase("case", json), throughTheForm(json), file.toString());
        }
    }

    @Test
    void aCaseWithEverything_comesBackFromItsFormAsItWas() {
        byte[] json = CaseTree.soundLeg()
                .set("importance", List.of("nerve-safety", "few-needles"))
                .set("room.freeMinutes", 90)
                .set("room.costClasses.low", List.of())
                .set("room.costClasses.high", List.of("steam"))
                .set("limbs.0.trunkIsMainOutflow", false)
                .set("limbs.0.segments.0.nerve.gapSdMm", 0.25)
                .set("limbs.0.segments.0.chosen", "steam")
                .bytes();
        assertEquals(TUNICA.readCase("case", json), throughTheForm(json));
    }

    @Test
    void anEmptyForm_saysNothingOfAnything() {
        CaseFile read = TUNICA.readCase(
                "case",
                bytes(typed(Map.of(
                        "caseRef", "blank-01",
                        "limbs[0].side", "left",
                        "limbs[0].segments[0].ref", "L1",
                        "limbs[0].segments[0].vein", "great-saphenous",
                        "limbs[0].segments[0].level", "thigh"))));
        assertTrue(read.patient().ageYears().isEmpty());
        assertTrue(read.patient().allergies().isEmpty());
        assertTrue(read.room().devices().isEmpty());
        assertTrue(read.room().sclerosants().isEmpty());
        assertTrue(read.limbs().get(0).segments().get(0).wallThicknessMm().isEmpty());
    }

    @Test
    void whatCannotBeRead_isToldAtItsFieldAndStaysInIt() {
        Map<String, String> wrong = new LinkedHashMap<>();
        blocks().forEach((prefix, asks) -> asks.forEach(ask -> wrong(ask, prefix + ask.field(), wrong)));
        assertTrue(wrong.size() > 50, () -> "too few fields: " + wrong.keySet());
        Map<String, String> sent = new LinkedHashMap<>(wrong);
        blocks().forEach((prefix, asks) -> asks.stream()
                .filter(ask -> ask.kind() == Ask.Kind.SET || ask.kind() == Ask.Kind.ROWS)
                .forEach(ask -> sent.put(prefix + ask.field(), Typed.RECORDED)));
        Typed typed = typed(sent);
        CaseForm form = CaseForm.of(ASKS, typed, faults(typed));
        List<String> fields = new ArrayList<>();
        fields(form).filter(field -> !field.faults().isEmpty()).forEach(field -> fields.add(field.name()));
        List<String> expected =
                wrong.keySet().stream().map(name -> name.replace("[]", "")).toList();
        assertEquals(
                expected.stream().sorted().toList(),
                fields.stream().distinct().sorted().toList());
        assertTrue(form.mends().stream().noneMatch(mend -> mend.id().isEmpty()), form.mends()::toString);
        fields(form)
                .filter(field -> field.shape() == FormField.Shape.LINE && wrong.containsKey(field.name()))
                .forEach(field -> assertEquals(wrong.get(field.name()), field.value()));
        assertTrue(fields(form)
                .filter(field -> field.shape() == FormField.Shape.SELECT
                        && !field.faults().isEmpty())
                .allMatch(field -> field.choices().stream()
                        .anyMatch(one -> one.picked() && one.says().contains("<7"))));
    }

    @Test
    void aListTickedButMarkedAsNotRecorded_isRefusedRatherThanLost() {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        fields.put("patient.allergies", List.of(""));
        fields.put("patient.allergies[]", List.of("polidocanol"));
        fields.put("room.sclerosants[1].percent", List.of("1"));
        Typed typed = new Typed(fields);
        List<String> places =
                TypedCase.of(ASKS, typed).faults().stream().map(Fault::place).toList();
        assertEquals(List.of("patient.allergies", "room.sclerosants"), places);
    }

    @Test
    void aFaultInALaterRow_isToldInThatRow() {
        Typed typed = typed(Map.of(
                "room.sclerosants", "recorded",
                "room.sclerosants[3].drug", "polidocanol",
                "room.sclerosants[3].percent", "77"));
        CaseForm form = CaseForm.of(ASKS, typed, faults(typed));
        assertTrue(fields(form)
                .anyMatch(field -> field.name().equals("room.sclerosants[3].percent")
                        && field.faults().get(0).contains("is 77")));
    }

    @Test
    void segmentsAreAddedCopiedAndRemoved_andCountedWithoutGaps() {
        Typed typed = typed(Map.of(
                "limbs[0].side", "left", "limbs[0].segments[0].ref", "L1", "limbs[0].segments[0].lengthCm", "38"));
        FormStep copied = FormStep.of("copy limbs[0].segments[0]", typed).orElseThrow();
        assertEquals("limbs[0].segments[1]", copied.at());
        assertEquals("38", copied.typed().text("limbs[0].segments[1].lengthCm"));
        assertEquals("", copied.typed().text("limbs[0].segments[1].ref"));
        Typed removed = FormStep.of(
                        "remove limbs[0].segments[0]", copied.typed().with("limbs[0].segments[1].ref", "L2"))
                .orElseThrow()
                .typed();
        assertEquals(1, removed.segments(0));
        assertEquals("L2", removed.text("limbs[0].segments[0].ref"));
        assertFalse(removed.fields().containsKey("limbs[0].segments[1].ref"));
        Typed twoLegs = FormStep.of("add-leg", removed).orElseThrow().typed();
        assertEquals(2, twoLegs.legs());
        assertEquals(2, FormStep.of("add-leg", twoLegs).orElseThrow().typed().legs());
        Typed oneLeg = FormStep.of("remove limbs[0]", twoLegs).orElseThrow().typed();
        assertEquals(1, oneLeg.legs());
        assertTrue(FormStep.of("save", typed).isEmpty());
        assertTrue(FormStep.of("add limbs[999]", typed).isEmpty());
    }

    @Test
    void whatSomebodyElseChanged_isToldFieldByField() {
        Typed before = typed(Map.of("limbs[0].segments[0].wallThicknessMm", "0.4", "patient.sex", "female"));
        Typed after = typed(Map.of("patient.sex", "female", "patient.ageYears", "54"));
        List<String> changes = Meanwhile.changes(ASKS, before, after);
        assertEquals(2, changes.size());
        assertTrue(changes.get(0).endsWith("(limbs[0].segments[0].wallThicknessMm): now not recorded, was 0.4"));
        assertTrue(changes.get(1).endsWith("(patient.ageYears): now 54, was not recorded"));
    }

    /** Something no field of that kind can hold. */
    private static void wrong(Ask ask, String name, Map<String, String> wrong) {
        switch (ask.kind()) {
            case TEXT, NUMBER, WORD, FLAG -> wrong.put(name, "<7 b>");
            case SET -> wrong.put(name + "[]", "<7 b>");
            case ORDER -> wrong.put(name + "[2]", "<7 b>");
            case ROWS -> ask.row().forEach(one -> wrong(one, name + "[1]." + one.field(), wrong));
        }
    }

    private static Map<String, List<Ask>> blocks() {
        Map<String, List<Ask>> blocks = new LinkedHashMap<>();
        blocks.put("", ASKS.head());
        blocks.put("patient.", ASKS.patient());
        blocks.put("room.", ASKS.room());
        blocks.put("limbs[0].", ASKS.limb());
        blocks.put("limbs[0].segments[0].", ASKS.segment());
        return blocks;
    }

    private static Stream<FormField> fields(CaseForm form) {
        return Stream.of(
                        Stream.of(form.head(), form.patient(), form.room()),
                        form.legs().stream().map(FormBlock.Leg::leg),
                        form.legs().stream().flatMap(leg -> leg.segments().stream()))
                .flatMap(blocks -> blocks)
                .flatMap(block -> Stream.concat(block.usual().stream(), block.rare().stream()))
                .flatMap(field ->
                        Stream.concat(Stream.of(field), field.rows().stream().flatMap(List::stream)));
    }

    private static List<Fault> faults(Typed typed) {
        TypedCase written = TypedCase.of(ASKS, typed);
        List<Fault> faults = new ArrayList<>(written.faults());
        try {
            TUNICA.readCase("case", written.json().getBytes(StandardCharsets.UTF_8));
        } catch (FaultyInput e) {
            e.faults().forEach(fault -> faults.add(new Fault(written.field(fault.place()), fault.says())));
        }
        return faults;
    }

    private static CaseFile throughTheForm(byte[] json) {
        Typed typed = CaseTrees.typed(ASKS, JsonText.parse("case", json));
        return TUNICA.readCase("case", bytes(typed));
    }

    private static byte[] bytes(Typed typed) {
        TypedCase written = TypedCase.of(ASKS, typed);
        assertEquals(List.of(), written.faults());
        return written.json().getBytes(StandardCharsets.UTF_8);
    }

    private static Typed typed(Map<String, String> fields) {
        Map<String, List<String>> lists = new LinkedHashMap<>();
        fields.forEach((name, text) -> lists.put(name, List.of(text)));
        return new Typed(lists);
    }
}
