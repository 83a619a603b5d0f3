package org.tunica.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import org.tunica.heat.WindowLine;
import org.tunica.statistics.CusumSide;

/**
 * How a line is drawn: a colour that people who confuse colours can tell apart (palette of Okabe and Ito), and a dash
 * that nobody else has, so that a line is known without its colour.
 */
record LineStyle(String says, Color colour, float width, float... dash) {
    static final Color INK = new Color(0x22, 0x22, 0x22);
    static final Color FAINT = new Color(0x77, 0x77, 0x77);
    private static final Color GREEN = new Color(0x00, 0x9E, 0x73);
    static final Color AT_ONCE_TINT = new Color(0x00, 0x9E, 0x73, 105);
    static final Color LATER_TINT = new Color(0x56, 0xB4, 0xE9, 55);
    static final Color YELLOW = new Color(0xF0, 0xE4, 0x42);

    private static final Color DEEP_BLUE = new Color(0x00, 0x72, 0xB2);
    static final Color VERMILLION = new Color(0xD5, 0x5E, 0x00);
    private static final Color ORANGE = new Color(0xE6, 0x9F, 0x00);
    private static final Color PURPLE = new Color(0xCC, 0x79, 0xA7);

    private static final int TINT = 42;

    /** Dark rim on either side of a line. */
    private static final float RIM = 1.6f;

    static LineStyle of(WindowLine line) {
        return switch (line) {
            case DIES_AT_ONCE -> new LineStyle("whole wall dies at once", GREEN, 3.4f);
            case DIES_LATER -> new LineStyle("whole wall dies at once or later", DEEP_BLUE, 2.6f, 16, 6);
            case CHAR -> new LineStyle("char starts", INK, 2.6f, 3, 4);
            case PERFORATION -> new LineStyle("perforation feared", PURPLE, 3, 14, 4, 3, 4);
            case NERVE -> new LineStyle("nerve: red line", VERMILLION, 3, 7, 4);
            case SKIN -> new LineStyle("skin: red line", ORANGE, 3, 18, 4, 3, 4, 3, 4);
        };
    }

    /** The line of a group of cases; a fifth has none. */
    static LineStyle ofGroup(int group) {
        return switch (group) {
            case 0 -> new LineStyle("first", DEEP_BLUE, 3);
            case 1 -> new LineStyle("second", VERMILLION, 3, 12, 4);
            case 2 -> new LineStyle("third", GREEN, 3, 4, 3);
            case 3 -> new LineStyle("fourth", PURPLE, 3, 14, 4, 3, 4);
            default -> throw new IllegalArgumentException("no line for group " + group);
        };
    }

    static LineStyle of(CusumSide side) {
        return switch (side) {
            case WORSE -> new LineStyle("worse than predicted", VERMILLION, 2.6f);
            case BETTER -> new LineStyle("better than predicted", DEEP_BLUE, 2.6f, 10, 4);
        };
    }

    /** The same colour for an area behind the line. */
    Color tint() {
        return new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), TINT);
    }

    BasicStroke stroke() {
        return stroke(width);
    }

    BasicStroke rim() {
        return stroke(width + RIM);
    }

    private BasicStroke stroke(float thick) {
        return dash.length == 0
                ? new BasicStroke(thick, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
                : new BasicStroke(thick, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dash, 0);
    }
}
