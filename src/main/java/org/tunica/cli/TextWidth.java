package org.tunica.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How wide a text may be: the option of every command that prints one. */
final class TextWidth {
    private static final int WITHOUT_TERMINAL = 100;
    private static final int NARROWEST = 60;
    private static final int WIDEST = 160;

    @Option(
            names = "--width",
            paramLabel = "COLUMNS",
            description = "Width of the text, 60 to 160 (default: that of the terminal).")
    private int columns = ofTerminal();

    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    TextWidth() {
        this.command = CommandSpec.create();
    }

    int columns() {
        return columns;
    }

    /** @throws ParameterException when a user asks for too few or too many columns */
    void check() {
        check(columns, command);
    }

    /** @throws ParameterException when a user asks for too few or too many columns */
    static void check(int columns, CommandSpec spec) {
        if (columns < NARROWEST || columns > WIDEST) {
            throw new ParameterException(
                    spec.commandLine(), "--width must be " + NARROWEST + " to " + WIDEST + " columns, is " + columns);
        }
    }

    /** The columns the terminal announces, or a fixed width where there is none, so that files always look the same. */
    static int ofTerminal() {
        String columns = System.getenv("COLUMNS");
        return System.console() == null || columns == null || !columns.matches("\\d{1,4}")
                ? WITHOUT_TERMINAL
                : Math.max(NARROWEST, Math.min(WIDEST, Integer.parseInt(columns)));
    }
}
