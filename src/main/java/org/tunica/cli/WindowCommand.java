package org.tunica.cli;

import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tunica.Tunica;
import org.tunica.physics.SegmentWindow;
import org.tunica.picture.WindowPicture;
import org.tunica.plan.Advice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows what every setting of a heat device does to one segment. */
@Command(
        name = "window",
        description = {
            "Map power by pullback of a heat device for the wall of one segment: where the whole wall dies, where it"
                    + " chars, where nerve and skin are too warm. Without --out the map is printed in letters. A device"
                    + " that is held still, and steam, get a table."
        },
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class WindowCommand implements Callable<Integer> {
    private static final String PICTURE_WIDTHS =
            "must be " + WindowPicture.LEAST_WIDTH_PX + " to " + WindowPicture.MOST_WIDTH_PX + " pixels";

    @Parameters(paramLabel = "CASE.json", description = "The case; - reads standard input.")
    private String file = "";

    @Option(names = "--segment", paramLabel = "REF", required = true, description = "Name of the segment in the case.")
    private String segment = "";

    @Option(
            names = "--technique",
            paramLabel = "ID",
            required = true,
            description = "A heat technique, such as laser-1470-radial.")
    private String technique = "";

    @Option(names = "--out", paramLabel = "FILE", description = "Draw the map to a file that ends in .svg or .png.")
    private String out = "";

    @Option(
            names = "--width",
            paramLabel = "N",
            description = "Columns of the text, 60 to 160, or pixels of the picture, 500 to 4000.")
    private Optional<Integer> width = Optional.empty();

    @Mixin
    private RulesInUse rules = new RulesInUse();

    @Spec
    private CommandSpec spec;

    WindowCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        return out.isEmpty() ? text() : picture();
    }

    private int text() {
        int columns = width.orElseGet(TextWidth::ofTerminal);
        TextWidth.check(columns, spec);
        try (Consulted consulted = rules.open()) {
            consulted.tell(spec.commandLine().getErr());
            Tunica tunica = consulted.tunica();
            SegmentWindow window = window(tunica);
            spec.commandLine()
                    .getOut()
                    .print(new WindowText(window, tunica.heat().words(window), columns).text());
        }
        return 0;
    }

    private int picture() {
        int pixels = width.orElse(WindowPicture.USUAL_WIDTH_PX);
        if (pixels < WindowPicture.LEAST_WIDTH_PX || pixels > WindowPicture.MOST_WIDTH_PX) {
            throw wrong("--width " + PICTURE_WIDTHS + ", is " + pixels);
        }
        boolean svg = ends(".svg");
        if (!svg && !ends(".png")) {
            throw wrong("--out must end in .svg or .png, is " + out);
        }
        OutputFile target = OutputFile.replacing(out);
        try (Consulted consulted = rules.open()) {
            consulted.tell(spec.commandLine().getErr());
            Tunica tunica = consulted.tunica();
            WindowPicture picture = tunica.heat().picture(window(tunica), pixels);
            target.write(svg ? picture.svg() : picture.png());
        }
        return 0;
    }

    private SegmentWindow window(Tunica tunica) {
        return tunica.heat().heatWindow(tunica.readCase(file, InputFile.read(file)), segment, technique);
    }

    private boolean ends(String ending) {
        return out.toLowerCase(Locale.ROOT).endsWith(ending);
    }

    private ParameterException wrong(String says) {
        return new ParameterException(spec.commandLine(), says);
    }
}
