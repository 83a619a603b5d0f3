package org.tunica.cli;

import picocli.CommandLine.Option;

/**
 * Where the data are, for the commands that look after them. It names no type of the store: the library looks at every
 * field and method of a command at each start, and the store is not to be loaded for an advice.
 */
final class DataPlace {
    /** Who acts, in the audit trail: a person at the machine itself. */
    static final String ACTOR = "command-line";

    @Option(
            names = "--data",
            required = true,
            paramLabel = "FOLDER",
            description = "The folder with the data, or a jdbc:postgresql: URL (its password is best left to"
                    + " the password file of the driver).")
    private String place = "";

    String place() {
        return place;
    }
}
