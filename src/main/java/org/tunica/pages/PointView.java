package org.tunica.pages;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.drawing.WallCoats;
import org.tunica.heat.HeatFlag;
import org.tunica.heat.HeatLimits;
import org.tunica.heat.HeatRun;
import org.tunica.heat.HeatSetting;
import org.tunica.heat.WarmedPoint;
import org.tunica.knowledge.Knowledge;
import org.tunica.physics.SegmentWindow;
import org.tunica.physics.WindowPoint;

/**
 * What one setting does to one wall, as a page shows it.
 *
 * @param setting power, pull-back and the linear energy they make
 * @param verdict what to make of it, in a sentence
 * @param lines what was computed, each with what it means
 * @param remarks ceilings passed, what was assumed, why to trust it less
 */
public record PointView(String setting, String verdict, List<Line> lines, List<String> remarks) {
    private static final double THROUGH = 1;

    /** A number, what it means here, and the help to it. */
    public record Line(String what, String value, String means, List<NumberNote> notes) {}

    public PointView {
        lines = List.copyOf(lines);
        remarks = List.copyOf(remarks);
    }

    /** The view of a point, with the borders of the coats as they are drawn. */
    public static PointView of(WindowPoint point, WallCoats coats, Knowledge knowledge) {
        return new PointView(
                setting(point.setting()),
                verdict(point),
                lines(point, coats, new PointNotes(knowledge)),
                remarks(point));
    }

    /** A setting in words; the energy of a length only with its power and pull-back. */
    public static String setting(HeatSetting.Pulled setting) {
        return number(setting.powerW(), 2) + " W, pullback " + number(setting.pullbackSPerCm(), 2)
                + " s/cm, which makes " + Math.round(setting.energyJPerCm()) + " J/cm";
    }

    private static List<Line> lines(WindowPoint point, WallCoats coats, PointNotes notes) {
        HeatRun run = point.run();
        WallCoats.Taken atOnce = coats.within(run.killDepthPerWall());
        WallCoats.Taken later = coats.within(run.delayedDepthMm() / run.wallMm());
        List<Line> lines = new ArrayList<>();
        lines.add(coat("intima", atOnce.intimaShare(), later.intimaShare(), notes));
        lines.add(coat("media", atOnce.mediaShare(), later.mediaShare(), notes));
        lines.add(coat("adventitia", atOnce.adventitiaShare(), later.adventitiaShare(), notes));
        lines.add(new Line(
                "depth dead",
                number(run.killDepthMm(), 2) + " mm at once, " + number(run.delayedDepthMm(), 2)
                        + " mm at once or later",
                "of a wall of " + number(run.wallMm(), 2) + " mm on the device: " + through(run),
                notes.depth()));
        lines.add(new Line(
                "char index",
                number(run.charIndex(), 2),
                run.chars() ? "CHARS: charring starts at 1" : "below 1, where charring starts",
                notes.charring()));
        lines.add(new Line(
                "perforation index",
                number(run.perforationIndex(), 2),
                (perforates(point) ? "FEARED: from " : "below ")
                        + number(point.limits().mostPerforationIndex(), 2) + ", where perforation is feared",
                notes.perforation()));
        lines.add(warmth(
                "nerve", point.slice().nerveGapMm(), run.nerve(), point.limits().nerve(), notes));
        lines.add(warmth(
                "skin", point.slice().skinGapMm(), run.skin(), point.limits().skin(), notes));
        return lines;
    }

    private static Line coat(String name, double atOnceShare, double laterShare, PointNotes notes) {
        String means = atOnceShare >= THROUGH
                ? "all of it dies at once"
                : laterShare >= THROUGH ? "all of it dies, part of it later" : "PART OF IT LIVES";
        return new Line(
                name + " dead",
                percent(atOnceShare) + " at once, " + percent(laterShare) + " at once or later",
                means,
                notes.coat(name));
    }

    private static String through(HeatRun run) {
        if (run.killDepthPerWall() >= THROUGH) {
            return "through at once";
        }
        return run.delayedDepthMm() >= run.wallMm() ? "through, part of it later" : "NOT THROUGH";
    }

    private static Line warmth(
            String what, OptionalDouble gapMm, Optional<WarmedPoint> warmed, HeatLimits.Warmth line, PointNotes notes) {
        if (gapMm.isEmpty() || warmed.isEmpty()) {
            return new Line(
                    what, "not recorded", "the gap is not recorded; that does not mean safe", notes.warmth(what));
        }
        String lines = number(line.redPeakC(), 1) + " °C or " + number(line.redCem43Min(), 1)
                + " equivalent minutes at 43 °C, " + number(gapMm.getAsDouble(), 1)
                + " mm from the wall before tumescence";
        return new Line(
                what,
                number(warmed.get().peakC(), 1) + " °C at its warmest, "
                        + number(warmed.get().cem43Min(), 1) + " equivalent minutes at 43 °C",
                (line.accepts(warmed.get()) ? "below the red line, " : "TOO WARM: past the red line, ") + lines,
                notes.warmth(what));
    }

    private static String verdict(WindowPoint point) {
        List<String> harms = harms(point);
        String wall = switch (wall(point.run())) {
            case 2 -> "The whole wall dies at once";
            case 1 -> "The whole wall dies, part of it later";
            default -> "The wall does not die through";
        };
        if (!harms.isEmpty()) {
            return wall + "; " + String.join(", ", harms) + ".";
        }
        return wall + "; no harm is computed"
                + (unknown(point) ? ", but the gap to nerve or skin is NOT RECORDED, which does not mean safe." : ".");
    }

    private static int wall(HeatRun run) {
        return run.killDepthPerWall() >= THROUGH ? 2 : run.delayedDepthMm() >= run.wallMm() ? 1 : 0;
    }

    private static List<String> harms(WindowPoint point) {
        HeatRun run = point.run();
        List<String> harms = new ArrayList<>();
        if (run.chars()) {
            harms.add("it chars");
        }
        if (perforates(point)) {
            harms.add("perforation is feared");
        }
        run.nerve()
                .filter(warmed -> !point.limits().nerve().accepts(warmed))
                .ifPresent(warmed -> harms.add("the nerve gets too warm"));
        run.skin()
                .filter(warmed -> !point.limits().skin().accepts(warmed))
                .ifPresent(warmed -> harms.add("the skin gets too warm"));
        return harms;
    }

    private static boolean perforates(WindowPoint point) {
        return point.run().perforationIndex() >= point.limits().mostPerforationIndex();
    }

    private static boolean unknown(WindowPoint point) {
        return point.slice().nerveGapMm().isEmpty() || point.slice().skinGapMm().isEmpty();
    }

    private static List<String> remarks(WindowPoint point) {
        HeatSetting.Pulled setting = point.setting();
        List<String> remarks = new ArrayList<>();
        ceiling(remarks, "Power", setting.powerW(), point.powerW(), "W");
        ceiling(remarks, "Pullback", setting.pullbackSPerCm(), point.pullbackSPerCm(), "s/cm");
        ceiling(
                remarks,
                "Linear energy, at this power and pullback,",
                setting.energyJPerCm(),
                point.energyJPerCm(),
                "J/cm");
        remarks.addAll(point.assumed());
        point.run().flags().stream().sorted().map(PointView::flag).forEach(remarks::add);
        return remarks;
    }

    private static void ceiling(
            List<String> remarks, String what, double value, SegmentWindow.Ceiling ceiling, String unit) {
        if (value > ceiling.value()) {
            remarks.add(what + " is ABOVE THE CEILING of " + number(ceiling.value(), 2) + " " + unit + " ("
                    + ceiling.origin() + ").");
        }
    }

    private static String flag(HeatFlag flag) {
        return switch (flag) {
            case NOT_CALIBRATED -> "No bench fact was compared for this device: trust it less.";
            case OUTSIDE_CALIBRATION ->
                "This setting lies outside those that bench facts were compared for: trust it less.";
            case BLOOD_NOT_AS_USUAL -> "With blood left in the vein the figures are extrapolated.";
            case FILM_NOT_AS_USUAL -> "The fluid film is not the usual one of the device.";
            case AXIAL_CONDUCTION -> "At such a slow pullback heat runs ahead along the vein, which is left out.";
            case CHARRING -> "Past the start of charring the figures are not graded.";
        };
    }

    private static String percent(double share) {
        // less than all is never shown as all
        return (share < THROUGH ? (int) Math.floor(100 * share) : 100) + " %";
    }

    private static String number(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
