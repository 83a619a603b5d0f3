package org.tunica.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.pastcases.CaseBase;
import picocli.CommandLine.Option;

/** The option that names the folder of a case base. */
final class CasesFolder {
    @Option(
            names = "--cases",
            paramLabel = "FOLDER",
            required = true,
            description = "The folder of the case base; it is made if it is not there.")
    private String folder = "";

    CaseBase base(Tunica tunica) {
        return tunica.pastCases().caseBase(path(folder));
    }

    String name() {
        return folder;
    }

    static Path path(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new FaultyInput("input", List.of(new Fault(name, "is not a file name here: " + e.getReason())));
        }
    }
}
