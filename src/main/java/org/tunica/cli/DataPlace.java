package org.tunica.cli;

import java.time.Clock;
import org.tunica.store.Actor;
import org.tunica.store.Store;
import picocli.CommandLine.Option;

/** Where the data are, for the commands that look after them. */
final class DataPlace {
    /** Who acts, in the audit trail: a person at the machine itself. */
    static final Actor ACTOR = new Actor("command-line");

    @Option(
            names = "--data",
            required = true,
            paramLabel = "FOLDER",
            description = "The folder with the data, or a jdbc:postgresql: URL (its password is best left to"
                    + " the password file of the driver).")
    private String place = "";

    /** @throws org.tunica.casefile.FaultyInput when there is none */
    Store existing() {
        return Store.existing(place, Clock.systemUTC());
    }

    /** Made when there is none. */
    Store open() {
        return Store.open(place, Clock.systemUTC());
    }
}
