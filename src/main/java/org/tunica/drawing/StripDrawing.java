package org.tunica.drawing;

import java.util.List;
import java.util.Optional;
import org.tunica.knowledge.Family;

/** The wall strip as SVG: one band an option, under one ruler of millimetres. */
final class StripDrawing {
    private static final double WIDTH = 1150;
    private static final double NAMES = 236;
    private static final double LUMEN = 34;
    private static final double RIGHT = 264;
    private static final double TOP = 74;
    private static final double ROW = 62;
    private static final double BAND = 28;
    private static final double BAR = 12;
    private static final double TICK = 2.5;
    private static final double FOOT = 26;
    private static final String INK = "#222222";

    private static final Svg.Look FLUID = Svg.Look.filled("fluid", "#EAF3FA");
    private static final Svg.Look INSIDE = Svg.Look.filled("lumen", "#D9D9D9");
    private static final List<Svg.Look> COATS = List.of(
            Svg.Look.outlined("coat intima", "#FBF1DC", "#8A6D3B"),
            Svg.Look.outlined("coat media", "#F3DDB3", "#8A6D3B"),
            Svg.Look.outlined("coat adventitia", "#E6C58A", "#8A6D3B"));
    private static final Svg.Look DEAD = Svg.Look.filled("dead", "#0072B2");
    private static final Svg.Look REACHED = Svg.Look.outlined("reached", "#9CCBE8", "#0072B2");
    private static final Svg.Look LATER = Svg.Look.dashed("later", "#0072B2", "5 3");
    private static final Svg.Look SPREAD = Svg.Look.outlined("spread", "none", INK);
    private static final Svg.Look RULER = Svg.Look.outlined("ruler", "none", INK);
    private static final Svg.Look GRID = Svg.Look.dashed("grid", "#BBBBBB", "1 4");
    private static final Svg.Look NERVE = Svg.Look.outlined("nerve", "#F0E442", INK);
    private static final Svg.Look SKIN = Svg.Look.outlined("skin", "#E69F00", INK);

    private final WallStrip strip;
    private final WallCoats coats;
    private final double pxPerMm;

    StripDrawing(WallStrip strip, WallCoats coats) {
        this.strip = strip;
        this.coats = coats;
        this.pxPerMm = (WIDTH - NAMES - LUMEN - RIGHT) / strip.endMm();
    }

    String svg() {
        double height = TOP + ROW * strip.rows().size() + FOOT;
        String says = "Wall to scale. " + strip.title() + ". " + String.join(" ", strip.sentences());
        return Svg.of("wall-strip", WIDTH, height, says, svg -> {
            legend(svg);
            ruler(svg, height - FOOT);
            double y = TOP;
            for (StripRow row : strip.rows()) {
                row(svg, row, y);
                y += ROW;
            }
            svg.text("note", Svg.Anchor.START, 0, height - 8, foot());
        });
    }

    private String foot() {
        return "To scale, mm from the inner face of the wall. Borders of the coats inside a wall are schematic: only the"
                + " whole wall is measured. Whisker: 10 to 90 % of draws.";
    }

    private double x(double mm) {
        return NAMES + LUMEN + Math.min(mm, strip.endMm()) * pxPerMm;
    }

    private void legend(Svg svg) {
        double x = NAMES + LUMEN;
        svg.box(DEAD, x, 4, 22, BAR);
        svg.text("legend", Svg.Anchor.START, x + 28, 15, "dead at once");
        svg.box(LATER, x + 126, 4, 22, BAR);
        svg.text("legend", Svg.Anchor.START, x + 154, 15, "dead at once or later");
        svg.box(REACHED, x + 308, 4, 22, BAR);
        svg.text("legend", Svg.Anchor.START, x + 336, 15, "reached by drug or focus");
        diamond(svg, x + 520, 10);
        svg.text("legend", Svg.Anchor.START, x + 532, 15, "nerve");
        svg.box(SKIN, x + 584, 2, 5, 16);
        svg.text("legend", Svg.Anchor.START, x + 596, 15, "skin");
        svg.text("legend", Svg.Anchor.START, 0, 40, "option, its standing");
        svg.text("legend", Svg.Anchor.END, x - 4, 40, "lumen");
        svg.text("legend", Svg.Anchor.START, x + 4, 40, "wall (intima, media, adventitia), then fluid and tissue");
    }

    private void ruler(Svg svg, double bottom) {
        double y = TOP - 12;
        svg.line(RULER, x(0), y, x(strip.endMm()), y);
        for (int mm = 0; mm <= strip.endMm(); mm++) {
            svg.line(RULER, x(mm), y - 5, x(mm), y);
            svg.line(GRID, x(mm), TOP - 6, x(mm), bottom);
            svg.text("tick", Svg.Anchor.MIDDLE, x(mm), y - 8, mm + (mm == 0 ? " mm" : ""));
        }
    }

    private void row(Svg svg, StripRow row, double y) {
        svg.text("option-name", Svg.Anchor.START, 0, y + 13, row.says());
        svg.text(
                "standing",
                Svg.Anchor.START,
                0,
                y + 31,
                StandingSign.of(row.standing()) + " " + StripWords.standing(row));
        svg.box(INSIDE, NAMES, y, LUMEN, BAND);
        svg.box(FLUID, x(row.wallMm()), y, x(strip.endMm()) - x(row.wallMm()), BAND);
        wall(svg, row.wallMm(), y);
        killed(svg, row, y + (BAND - BAR) / 2);
        row.beside().forEach(warmed -> beside(svg, row, warmed, y));
        svg.text("outcome", Svg.Anchor.START, NAMES + LUMEN, y + BAND + 17, row.outcome());
    }

    private void wall(Svg svg, double wallMm, double y) {
        double intima = wallMm * coats.intimaShare();
        double media = wallMm * coats.mediaShare();
        svg.box(COATS.get(0), x(0), y, x(intima) - x(0), BAND);
        svg.box(COATS.get(1), x(intima), y, x(intima + media) - x(intima), BAND);
        svg.box(COATS.get(2), x(intima + media), y, x(wallMm) - x(intima + media), BAND);
    }

    private void killed(Svg svg, StripRow row, double y) {
        Svg.Look look = row.family() == Family.HEAT ? DEAD : REACHED;
        row.atOnce().ifPresent(reach -> svg.box(look, x(0), y, x(reach.middleMm()) - x(0), BAR));
        row.later().ifPresent(reach -> svg.box(LATER, x(0), y - 3, x(reach.middleMm()) - x(0), BAR + 6));
        row.atOnce().filter(Reach::spreads).ifPresent(reach -> whisker(svg, reach, y + BAR + 4));
    }

    /** Below the bar, where nothing dark hides it. */
    private void whisker(Svg svg, Reach reach, double y) {
        String path = "M" + Svg.px(x(reach.lowMm())) + " " + Svg.px(y - TICK) + "v" + Svg.px(2 * TICK) + "m0 "
                + Svg.px(-TICK) + "H" + Svg.px(x(reach.highMm())) + "m0 " + Svg.px(-TICK) + "v" + Svg.px(2 * TICK);
        svg.path(SPREAD, path, 1.4);
    }

    private void beside(Svg svg, StripRow row, Warmed warmed, double y) {
        boolean skin = warmed.says().equals("skin");
        Optional<String> peak = warmed.peakC().map(felt -> Plain.tenths(felt.middleC()) + " °C");
        if (warmed.atMm() > strip.endMm()) {
            String far = "\u2192 " + warmed.says() + " at " + Plain.number(warmed.atMm() - row.wallMm()) + " mm"
                    + peak.map(text -> ", " + text).orElse("");
            svg.text("far", Svg.Anchor.START, WIDTH - RIGHT + 10, y + (skin ? BAND - 2 : 11), far);
            return;
        }
        double x = x(warmed.atMm());
        if (skin) {
            svg.box(SKIN, x, y - 3, 5, BAND + 6);
        } else {
            diamond(svg, x, y + BAND / 2);
        }
        peak.ifPresent(text -> svg.text("peak", Svg.Anchor.START, x + 11, y + BAND / 2 + 5, text));
    }

    private static void diamond(Svg svg, double x, double y) {
        svg.path(NERVE, "M" + Svg.px(x) + " " + Svg.px(y - 8) + "l7 8l-7 8l-7 -8z", 1.2);
    }
}
