package org.tunica.cli;

/** How wide a text may be. */
final class TextWidth {
    private static final int WITHOUT_TERMINAL = 100;
    private static final int NARROWEST = 60;
    private static final int WIDEST = 160;

    /** What a user may ask for. */
    static final String ALLOWED = "must be " + NARROWEST + " to " + WIDEST + " columns";

    private TextWidth() {}

    /** Whether a user may ask for so many columns. */
    static boolean allows(int columns) {
        return columns >= NARROWEST && columns <= WIDEST;
    }

    /** The columns the terminal announces, or a fixed width where there is none, so that files always look the same. */
    static int ofTerminal() {
        String columns = System.getenv("COLUMNS");
        return System.console() == null || columns == null || !columns.matches("\\d{1,4}")
                ? WITHOUT_TERMINAL
                : within(Integer.parseInt(columns));
    }

    static int within(int columns) {
        return Math.max(NARROWEST, Math.min(WIDEST, columns));
    }
}
