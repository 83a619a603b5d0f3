package org.tunica.cli;

import java.util.List;
import java.util.regex.Pattern;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import picocli.CommandLine.Option;

/**
 * Where the data are, for the commands that look after them. It names no type of the store: the library looks at every
 * field and method of a command at each start, and the store is not to be loaded for an advice.
 */
final class DataPlace {
    static final String COMMAND_LINE = "command-line";
    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,79}");

    @Option(
            names = "--data",
            required = true,
            paramLabel = "FOLDER",
            description = "The folder with the data, or a jdbc:postgresql: URL (its password is best left to"
                    + " the password file of the driver).")
    private String place = "";

    @Option(
            names = "--who",
            paramLabel = "NAME",
            description = "Who sits here, for the audit trail. Taken at their word: what must be proved is signed.")
    private String who = "";

    /** A place as it may be shown: without what opens it. */
    static String shown(String place) {
        return place.replaceAll("\\?.*", "").replaceAll("//[^/]*@", "//");
    }

    String place() {
        return place;
    }

    /**
     * Who acts, in the audit trail: the command line, and the name that was given.
     *
     * @throws FaultyInput when the name is none
     */
    String actor() {
        return actor(who);
    }

    /** The same of a name that another option gave. */
    static String actor(String who) {
        if (who.isEmpty()) {
            return COMMAND_LINE;
        }
        if (!NAME.matcher(who).matches()) {
            String says = "expected a name of letters, digits, '.', '_' and '-', got \"" + who + "\"";
            throw new FaultyInput("input", List.of(new Fault("--who", says)));
        }
        return COMMAND_LINE + ":" + who;
    }
}
