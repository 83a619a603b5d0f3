package org.tunica.store;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/** Where data are kept: a folder, or a database by its URL. */
interface Place {
    /**
     * The place somebody named.
     *
     * @throws FaultyInput when it is neither a folder nor a URL of a database that is known here
     */
    static Place named(String name) {
        if (name.startsWith(PostgresPlace.SCHEME)) {
            return new PostgresPlace(name);
        }
        if (name.startsWith("jdbc:")) {
            throw fault(
                    withoutSecrets(name),
                    "is no URL of a database known here; it starts with " + PostgresPlace.SCHEME + " or is a folder");
        }
        return FolderPlace.named(name);
    }

    /** The name without what may be a password. */
    static String withoutSecrets(String url) {
        return url.replaceAll("\\?.*", "").replaceAll("//[^/]*@", "//");
    }

    static FaultyInput fault(String place, String says) {
        return new FaultyInput("data", List.of(new Fault(place, says)));
    }

    /** How messages call it. */
    String shown();

    /** Whether anything could be there, so that a slip of the pen does not make an empty store. */
    boolean exists();

    /** The folder it is, when it is one. */
    default Optional<Path> ownFolder() {
        return Optional.empty();
    }

    /** Whether several servers may be over it at once. */
    default boolean shared() {
        return false;
    }

    /** Opens it; a folder is made when it is not there. */
    Connections connect();
}
