package org.tunica.cli;

import java.util.List;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.fhir.Site;

/** Reads the site file a user named. */
final class SiteFile {
    private SiteFile() {}

    /**
     * The site of a file.
     *
     * @throws FaultyInput when none is named or it is faulty
     */
    static Site read(String file, Tunica tunica) {
        if (file.isEmpty()) {
            throw new FaultyInput(
                    "input", List.of(new Fault("--site", "must be given: a record does not say what the room holds")));
        }
        return Site.read(file, InputFile.read(file), tunica);
    }
}
