package org.tunica.cli;

import java.util.Optional;
import org.tunica.cluster.EngineAddress;
import picocli.CommandLine.Option;

/** Where an index that many share may be. It names no type of the engine's client: that is loaded by who asks it. */
final class SharedIndex {
    @Option(
            names = "--index",
            paramLabel = "URL",
            description =
                    "Search the index on a search engine there (https://HOST:PORT, several with commas between); name"
                            + " and password are read from " + EngineAddress.USER + " and " + EngineAddress.PASSWORD
                            + ".")
    private Optional<String> url = Optional.empty();

    /** @throws org.tunica.casefile.FaultyInput when the address is none, or not protected */
    Optional<EngineAddress> address() {
        return url.map(address -> EngineAddress.of(address, System.getenv()));
    }
}
