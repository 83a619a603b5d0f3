package org.tunica.treatment;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.tunica.casefile.CaseFile;
import org.tunica.heat.Interval;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.paper.Block;
import org.tunica.physics.HeatGiven;
import org.tunica.session.Position;

/** The heat of one segment: what was given, stretch by stretch, and what the heat model says of it. */
final class HeatNote {
    private static final List<HeatBalance.Number> SHOWN = List.of(
            HeatBalance.Number.LENGTH,
            HeatBalance.Number.POWER,
            HeatBalance.Number.PULLBACK,
            HeatBalance.Number.LINEAR_ENERGY,
            HeatBalance.Number.ENERGY,
            HeatBalance.Number.TIME);

    private static final List<String> FINDINGS = List.of(
            "Stretch", "Whole wall dead at once", "At once or in days", "Char", "Nerve, degrees C", "Skin, degrees C");

    private static final String DRAWS =
            "Counted in draws over all that is not known. Temperatures are the highest reached, in"
                    + " the middle draw and in nine draws of ten.";

    private final Knowledge knowledge;
    private final HeatGiven heat;
    private final DeliveredLimits limits;

    HeatNote(Knowledge knowledge, HeatGiven heat, DeliveredLimits limits) {
        this.knowledge = knowledge;
        this.heat = heat;
        this.limits = limits;
    }

    /** Every stretch of a segment; none where no heat was given. */
    List<ProcedureNote.HeatedStretch> stretches(CaseFile caseFile, SegmentFacts facts) {
        Optional<String> device = facts.delivered()
                .technique()
                .filter(id -> knowledge.technique(id).family() == Family.HEAT);
        if (device.isEmpty()) {
            return List.of();
        }
        List<DeliveredHeat> settings = settings(facts.delivered());
        List<ProcedureNote.HeatedStretch> read = new ArrayList<>();
        for (DeliveredHeat one : settings) {
            read.add(stretch(caseFile, facts, device.get(), one, read.size() + 1, settings.size() == 1));
        }
        return read;
    }

    private static List<DeliveredHeat> settings(DeliveredSegment delivered) {
        return delivered.stretches().orElseGet(() -> delivered.heat().stream().toList());
    }

    private ProcedureNote.HeatedStretch stretch(
            CaseFile caseFile, SegmentFacts facts, String device, DeliveredHeat one, int number, boolean alone) {
        HeatBalance balance = HeatBalance.of(one, facts.delivered().treatedLengthCm(), limits.agreementShare());
        HeatGiven.Recorded recorded = new HeatGiven.Recorded(
                balance.value(HeatBalance.Number.POWER),
                balance.value(HeatBalance.Number.PULLBACK),
                one.cycles(),
                one.pulsesPerCm());
        HeatGiven.Effect effect = heat.of(caseFile, facts.mapped(), device, recorded, circumstances(facts.delivered()));
        return new ProcedureNote.HeatedStretch(
                facts.mapped().ref(), number, alone, one, balance, effect, Killed.of(effect, limits));
    }

    /** Prone says nothing of head-down. */
    private static HeatGiven.Circumstances circumstances(DeliveredSegment delivered) {
        Optional<Boolean> headDown = delivered
                .position()
                .filter(position -> position != Position.PRONE)
                .map(position -> position == Position.SUPINE_HEAD_DOWN);
        Optional<Boolean> tumescent = delivered
                .tumescent()
                .map(DeliveredSegment.Tumescent::volumeMl)
                .filter(OptionalDouble::isPresent)
                .map(volumeMl -> volumeMl.getAsDouble() > 0);
        return new HeatGiven.Circumstances(
                headDown, tumescent, delivered.tumescent().flatMap(DeliveredSegment.Tumescent::chilled));
    }

    /** What was given, as a table; a number no stretch has gets no column. */
    static List<Block> given(List<ProcedureNote.HeatedStretch> stretches) {
        if (stretches.isEmpty()) {
            return List.of();
        }
        List<HeatBalance.Number> shown = SHOWN.stream()
                .filter(number -> stretches.stream()
                        .anyMatch(one -> one.balance().value(number).isPresent()))
                .toList();
        boolean repeated = stretches.stream().anyMatch(HeatNote::repeated);
        List<String> head = new ArrayList<>(List.of("Stretch"));
        shown.forEach(number -> head.add(capital(number.says())));
        if (repeated) {
            head.add("Repeats");
        }
        List<List<String>> rows = new ArrayList<>();
        stretches.forEach(stretch -> rows.add(row(stretch, shown, repeated)));
        List<Block> blocks = new ArrayList<>(List.of(new Block.Table(head, rows)));
        if (stretches.stream().anyMatch(one -> shown.stream().anyMatch(one.balance()::computed))) {
            blocks.add(new Block.Paragraph("* not recorded; computed from the others."));
        }
        return blocks;
    }

    private static boolean repeated(ProcedureNote.HeatedStretch stretch) {
        return stretch.heat().cycles().isPresent()
                || stretch.heat().pulsesPerCm().isPresent();
    }

    private static List<String> row(
            ProcedureNote.HeatedStretch stretch, List<HeatBalance.Number> shown, boolean repeated) {
        List<String> row = new ArrayList<>(List.of(Integer.toString(stretch.number())));
        for (HeatBalance.Number number : shown) {
            OptionalDouble value = stretch.balance().value(number);
            String mark = stretch.balance().computed(number) ? " *" : "";
            row.add(value.isEmpty() ? "-" : number.with(value.getAsDouble()) + mark);
        }
        if (repeated) {
            row.add(repeats(stretch.heat()));
        }
        return row;
    }

    private static String repeats(DeliveredHeat heat) {
        if (heat.cycles().isPresent()) {
            int cycles = heat.cycles().getAsInt();
            return cycles + (cycles == 1 ? " cycle" : " cycles");
        }
        return heat.pulsesPerCm().isPresent() ? Rounded.text(heat.pulsesPerCm().getAsDouble()) + " pulses per cm" : "-";
    }

    /** What the heat model says of it: a sentence a stretch, the numbers in a table, what was assumed. */
    static List<Block> effect(List<ProcedureNote.HeatedStretch> stretches) {
        List<Block> blocks = new ArrayList<>();
        for (ProcedureNote.HeatedStretch stretch : stretches) {
            String says = capital(sentence(stretch));
            blocks.add(stretch.killed() == Killed.PROBABLY_NOT ? new Block.Warning(says) : new Block.Paragraph(says));
        }
        List<List<String>> rows = stretches.stream()
                .filter(stretch -> stretch.effect().told())
                .map(HeatNote::findings)
                .toList();
        if (!rows.isEmpty()) {
            blocks.add(new Block.Table(FINDINGS, rows));
            blocks.add(new Block.Paragraph(DRAWS));
        }
        Set<String> assumed = new LinkedHashSet<>();
        stretches.forEach(stretch -> assumed.addAll(stretch.effect().assumed()));
        assumed.forEach(says -> blocks.add(new Block.Paragraph(capital(says) + ".")));
        return blocks;
    }

    static String sentence(ProcedureNote.HeatedStretch stretch) {
        return (stretch.alone() ? "this stretch" : "stretch " + stretch.number())
                + stretch.length().map(length -> " (" + length + ") ").orElse(" ")
                + stretch.killed().says(stretch.effect()) + ".";
    }

    private static List<String> findings(ProcedureNote.HeatedStretch stretch) {
        HeatGiven.Effect effect = stretch.effect();
        return List.of(
                Integer.toString(stretch.number()),
                draws(effect, effect.killProbability()),
                draws(effect, effect.delayedProbability()),
                draws(effect, effect.charProbability()),
                peak(effect.nervePeakC()),
                peak(effect.skinPeakC()));
    }

    private static String draws(HeatGiven.Effect effect, double share) {
        return Math.round(share * effect.draws()) + " of " + effect.draws();
    }

    private static String peak(Optional<Interval> peakC) {
        return peakC.map(peak -> Math.round(peak.p50()) + ", " + Math.round(peak.p90()))
                .orElse("not recorded");
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
