package org.tunica.treatment;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tunica.casefile.Room;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.paper.Block;
import org.tunica.paper.Document;

/** The part of a note on one segment. */
final class SegmentNote {
    private final Knowledge knowledge;
    private final SegmentFacts facts;
    private final List<ProcedureNote.HeatedStretch> stretches;

    SegmentNote(Knowledge knowledge, SegmentFacts facts, List<ProcedureNote.HeatedStretch> stretches) {
        this.knowledge = knowledge;
        this.facts = facts;
        this.stretches = stretches;
    }

    Document.Section section() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Lines(before()));
        if (facts.delivered().notDone().isPresent()) {
            blocks.add(
                    new Block.Warning("Not done: " + facts.delivered().notDone().get()));
        } else {
            blocks.add(new Block.Lines(done()));
            blocks.addAll(HeatNote.given(stretches));
            blocks.add(new Block.Lines(means()));
            blocks.add(new Block.Lines(after()));
        }
        against(blocks);
        if (!stretches.isEmpty()) {
            blocks.add(new Block.Heading("What this heat does, by the heat model"));
            blocks.addAll(HeatNote.effect(stretches));
        }
        return new Document.Section(facts.name(), blocks);
    }

    private void against(List<Block> blocks) {
        List<String> differences = new PlanComparison(knowledge, facts, stretches).differences();
        blocks.add(new Block.Heading("Against the plan"));
        blocks.add(
                differences.isEmpty()
                        ? new Block.Paragraph("As planned, as far as it is recorded.")
                        : new Block.Points(differences));
    }

    /** The scan before, on which the plan rests. */
    private List<Block.Line> before() {
        Segment mapped = facts.mapped();
        return List.of(
                line(
                        "Before: length, straight part",
                        Says.number(mapped.lengthCm(), "cm") + ", " + Says.number(mapped.straightCm(), "cm")),
                line(
                        "Before: lumen, wall",
                        Says.number(mapped.lumenDiameterMm(), "mm") + ", " + Says.number(mapped.wallThicknessMm(), "mm")
                                + "; "
                                + Says.word(mapped.measured().posture())
                                + Says.flag(mapped.measured().inSpasm(), ", in spasm", "")
                                        .replace(Says.NOT_RECORDED, ", spasm not recorded")),
                line(
                        "Before: depth to skin, nerve, reflux",
                        Says.number(mapped.depthToSkinMm(), "mm") + "; "
                                + mapped.nerve()
                                        .name()
                                        .map(name -> Says.word(name) + " nerve at "
                                                + Says.number(mapped.nerve().gapMm(), "mm"))
                                        .orElse("nerve not recorded")
                                + "; " + Says.number(mapped.refluxSeconds(), "s")));
    }

    private List<Block.Line> done() {
        DeliveredSegment done = facts.delivered();
        List<Block.Line> lines = new ArrayList<>();
        lines.add(line(
                "Technique", knowledge.technique(done.technique().orElseThrow()).says()));
        lines.add(line("Position", Says.word(done.position())));
        if (catheter(done)) {
            lines.add(line("Access", access(done.access())));
            lines.add(line("Tip to deep junction", Says.number(done.tipToJunctionCm(), "cm")));
        }
        lines.add(line("Length treated", Says.number(done.treatedLengthCm(), "cm")));
        done.heat()
                .filter(heat -> done.stretches().isPresent())
                .map(DeliveredHeat::totalEnergyJ)
                .filter(OptionalDouble::isPresent)
                .ifPresent(energyJ -> lines.add(line("Energy of all stretches", Says.number(energyJ, "J"))));
        return lines;
    }

    /** What no catheter is used for has no access unless one is recorded. */
    private boolean catheter(DeliveredSegment done) {
        Family family = knowledge.technique(done.technique().orElseThrow()).family();
        return family != Family.FOAM && family != Family.FOCUSED_ULTRASOUND
                || done.access().vein().isPresent()
                || done.access().level().isPresent()
                || done.tipToJunctionCm().isPresent();
    }

    private static String access(DeliveredSegment.Access access) {
        return access.vein().isEmpty() && access.level().isEmpty()
                ? Says.NOT_RECORDED
                : "vein " + Says.word(access.vein()) + ", level " + Says.word(access.level());
    }

    /** Fluid, drug, adhesive and lesions, where there were any. */
    private List<Block.Line> means() {
        DeliveredSegment done = facts.delivered();
        List<Block.Line> lines = new ArrayList<>();
        done.tumescent().ifPresent(given -> lines.add(line("Tumescence", tumescent(given))));
        done.sclerosant().ifPresent(given -> lines.add(line("Sclerosant", sclerosant(given))));
        done.adhesive()
                .ifPresent(given -> lines.add(line(
                        "Adhesive",
                        "aliquots " + Says.count(given.aliquots()) + ", " + Says.number(given.volumeMl(), "mL"))));
        done.stretches()
                .or(() -> done.heat().map(List::of))
                .flatMap(heats -> heats.stream()
                        .map(DeliveredHeat::elementTemperatureC)
                        .filter(OptionalDouble::isPresent)
                        .findFirst())
                .ifPresent(celsius -> lines.add(line("Element temperature", Says.number(celsius, "degrees Celsius"))));
        count(lines, "Lesions", done.lesions());
        count(lines, "Phlebectomy, small cuts", done.phlebectomyIncisions());
        return lines;
    }

    private static void count(List<Block.Line> lines, String label, OptionalInt value) {
        if (value.isPresent()) {
            lines.add(line(label, Integer.toString(value.getAsInt())));
        }
    }

    private static String tumescent(DeliveredSegment.Tumescent given) {
        OptionalDouble mg = GivenDoses.lidocaineMg(given);
        return Says.number(given.volumeMl(), "mL") + ", lidocaine " + Says.number(given.lidocainePercent(), "%")
                + (mg.isPresent() ? " = " + Rounded.text(mg.getAsDouble()) + " mg" : "") + ", "
                + Says.flag(given.adrenaline(), "with adrenaline", "without adrenaline")
                        .replace(Says.NOT_RECORDED, "adrenaline not recorded")
                + ", "
                + Says.flag(given.chilled(), "chilled", "not chilled")
                        .replace(Says.NOT_RECORDED, "temperature not recorded");
    }

    private static String sclerosant(DeliveredSegment.Sclerosant given) {
        OptionalDouble mg = GivenDoses.drugMg(given);
        String liquid = Says.word(given.drug()) + " " + Says.number(given.percent(), "%") + ", liquid "
                + Says.number(GivenDoses.liquidMl(given), "mL")
                + (mg.isPresent() ? " = " + Rounded.text(mg.getAsDouble()) + " mg" : "");
        return GivenDoses.isFoam(given)
                ? liquid + "; foam " + Says.number(given.foamMl(), "mL") + " with "
                        + gas(given) + ", 1 part to "
                        + Says.number(given.gasParts(), "parts")
                : liquid;
    }

    private static String gas(DeliveredSegment.Sclerosant given) {
        return given.gas()
                .map(gas -> gas == Room.FoamGas.CO2_O2 ? "carbon dioxide and oxygen" : "air")
                .orElse("gas not recorded");
    }

    private List<Block.Line> after() {
        DeliveredSegment done = facts.delivered();
        return List.of(
                line(
                        "Incidents",
                        done.incidents()
                                        .map(incidents -> incidents.isEmpty() ? "none" : Says.words(incidents))
                                        .orElse(Says.NOT_RECORDED)
                                + done.incidentNote().map(note -> "; " + note).orElse("")),
                line(
                        "Last scan: length closed",
                        Says.number(done.closingDuplex().closedLengthCm(), "cm")),
                line("Last scan: deep vein", Says.flag(done.closingDuplex().deepVeinOpen(), "seen open", "NOT OPEN")));
    }

    static Block.Line line(String label, String text) {
        return new Block.Line(label, text);
    }
}
