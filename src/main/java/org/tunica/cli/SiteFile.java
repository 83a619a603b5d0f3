package org.tunica.cli;

import java.time.LocalDate;
import java.util.List;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.fhir.Site;
import picocli.CommandLine.Option;

/** The site a record is read at, and the day: options of every command that reads records. */
final class SiteFile {
    @Option(
            names = "--site",
            paramLabel = "SITE.yaml",
            description = "What the room holds and which codes are read (tunica-site/1).")
    private String file = "";

    @Option(names = "--day", paramLabel = "YYYY-MM-DD", description = "Day to which ages count (default: today).")
    private LocalDate day = LocalDate.now();

    /** The day to which ages count. */
    LocalDate day() {
        return day;
    }

    /**
     * The site of the file.
     *
     * @throws FaultyInput when none is named or it is faulty
     */
    Site read(Tunica tunica) {
        if (file.isEmpty()) {
            throw new FaultyInput(
                    "input", List.of(new Fault("--site", "must be given: a record does not say what the room holds")));
        }
        return Site.read(file, InputFile.read(file), tunica);
    }
}
