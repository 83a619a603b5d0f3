package org.tunica.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tunica.knowledge.Family;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.Predicted;

/** The strip for those who read or hear it. */
final class StripWords {
    private static final String NOTHING = "not computed";

    private StripWords() {}

    /** What comes of an option, in one line. */
    static String outcome(OptionAdvice option) {
        Predicted predicted = option.predicted();
        if (predicted.heat().isPresent()) {
            return heat(predicted.heat().get());
        }
        if (predicted.wallFractionKilled().isPresent()) {
            return "reaches " + Plain.percent(predicted.wallFractionKilled().getAsDouble()) + " of the wall";
        }
        return option.family() == Family.ADHESIVE ? "closes without killing the wall" : predicted.says();
    }

    private static String heat(Predicted.HeatForecast heat) {
        String death = "whole wall dies at once in " + Plain.percent(heat.deathAtOnceShare())
                + " of draws, at once or later in " + Plain.percent(heat.deathShare()) + "; char in "
                + Plain.percent(heat.charShare());
        return heat.withinLimits() ? death : death + "; no setting keeps all limits";
    }

    static List<List<String>> table(WallStrip strip) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "Option",
                "Standing",
                "Wall at work, mm",
                "Dead at once or reached, mm (10 to 90 %)",
                "Dead at once or later, mm (10 to 90 %)",
                "Nerve: from the wall, mm; peak, °C (10 to 90 %)",
                "Skin: from the wall, mm; peak, °C (10 to 90 %)"));
        strip.rows().forEach(row -> rows.add(cells(row)));
        return rows;
    }

    private static List<String> cells(StripRow row) {
        return List.of(
                row.says(),
                standing(row),
                Plain.number(row.wallMm()),
                row.atOnce().map(StripWords::reach).orElse(NOTHING),
                row.later().map(StripWords::reach).orElse(row.family() == Family.HEAT ? NOTHING : "does not apply"),
                beside(row, false),
                beside(row, true));
    }

    private static String reach(Reach reach) {
        return reach.spreads()
                ? Plain.number(reach.middleMm()) + " (" + Plain.number(reach.lowMm()) + " to "
                        + Plain.number(reach.highMm()) + ")"
                : Plain.number(reach.middleMm());
    }

    static String standing(StripRow row) {
        String word = row.standing().word().replace('-', ' ');
        return row.rank().isPresent() ? row.rank().getAsInt() + ", " + word : word;
    }

    private static String beside(StripRow row, boolean skin) {
        return row.beside().stream()
                .filter(warmed -> warmed.says().equals("skin") == skin)
                .findFirst()
                .map(warmed -> Plain.number(warmed.atMm() - row.wallMm()) + "; " + peak(warmed.peakC(), row))
                .orElse("not recorded");
    }

    static String peak(Optional<Warmed.Peak> peak, StripRow row) {
        if (peak.isEmpty()) {
            return row.family() == Family.HEAT ? NOTHING : "no heat computed";
        }
        return Plain.tenths(peak.get().middleC()) + " ("
                + Plain.tenths(peak.get().lowC()) + " to "
                + Plain.tenths(peak.get().highC()) + ")";
    }

    static List<String> sentences(WallStrip strip) {
        List<String> sentences = new ArrayList<>();
        strip.rows().forEach(row -> sentences.add(sentence(row)));
        strip.untold().forEach(untold -> sentences.add("Not drawn, " + untold + "."));
        return sentences;
    }

    private static String sentence(StripRow row) {
        StringBuilder text = new StringBuilder();
        text.append(standing(row)).append(": ").append(row.says()).append(". Wall ");
        text.append(Plain.number(row.wallMm()))
                .append(" mm; ")
                .append(row.outcome())
                .append('.');
        row.beside().forEach(warmed -> text.append(' ').append(said(warmed, row)));
        return text.toString();
    }

    private static String said(Warmed warmed, StripRow row) {
        String distance = Plain.number(warmed.atMm() - row.wallMm()) + " mm from the wall";
        return warmed.peakC().isPresent()
                ? "At its warmest the " + warmed.says() + ", " + distance + ", is at " + peak(warmed.peakC(), row)
                        + " °C."
                : "The " + warmed.says() + " lies " + distance + ".";
    }
}
