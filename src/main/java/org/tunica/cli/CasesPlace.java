package org.tunica.cli;

import java.io.PrintWriter;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** The options that name where past cases are kept. */
final class CasesPlace {
    @ArgGroup(multiplicity = "1")
    private Where where = new Where();

    /** One of the two. */
    static final class Where {
        @Option(
                names = "--cases",
                paramLabel = "FOLDER",
                description = "The folder of the case base; it is made if it is not there.")
        private String folder = "";

        @Option(
                names = "--data",
                paramLabel = "FOLDER",
                description = "The data of a server (a folder, or a jdbc:postgresql: URL): the past cases kept there.")
        private String data = "";
    }

    @Option(
            names = "--who",
            paramLabel = "NAME",
            description = "With --data: who sits here, for the audit trail. Taken at their word.")
    private String who = "";

    /**
     * Opens what was named.
     *
     * @param err for what the user must know of it
     * @throws org.tunica.casefile.FaultyInput when it cannot be used
     */
    PastCaseHouse open(PrintWriter err) {
        return where.data.isEmpty()
                ? new FolderHouse(where.folder)
                : new DataHouse(where.data, DataPlace.actor(who), err);
    }
}
