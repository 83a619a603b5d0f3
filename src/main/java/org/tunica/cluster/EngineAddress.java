package org.tunica.cluster;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/**
 * Where the nodes of a search engine are, and as whom it is asked.
 *
 * @param nodes their addresses; any of them will do
 */
public record EngineAddress(List<URI> nodes, Optional<Login> login) {
    /** Environment variables that hold name and password; an address is seen by others, an environment is not. */
    public static final String USER = "TUNICA_INDEX_USER";

    /** The password of {@link #USER}. */
    public static final String PASSWORD = "TUNICA_INDEX_PASSWORD";

    private static final Set<String> THIS_MACHINE = Set.of("localhost", "127.0.0.1", "[::1]");

    /** Name and password. */
    record Login(String user, String password) {
        @Override
        public String toString() {
            return user;
        }
    }

    public EngineAddress {
        nodes = List.copyOf(nodes);
    }

    /**
     * Reads addresses such as {@code https://a.example:9200,https://b.example:9200}.
     *
     * @param environment of the process
     * @throws FaultyInput with every address that is none, that would cross a network in the clear, or that holds a password
     */
    public static EngineAddress of(String addresses, Map<String, String> environment) {
        List<Fault> faults = new ArrayList<>();
        List<URI> nodes = new ArrayList<>();
        for (String address : addresses.split(",")) {
            fault(address.strip(), nodes).ifPresent(says -> faults.add(new Fault(address.strip(), says)));
        }
        boolean user = environment.containsKey(USER);
        if (user != environment.containsKey(PASSWORD)) {
            faults.add(new Fault(user ? PASSWORD : USER, "is missing, but its counterpart is set"));
        }
        if (!faults.isEmpty()) {
            throw new FaultyInput("address of the index", faults);
        }
        return new EngineAddress(
                nodes,
                user ? Optional.of(new Login(environment.get(USER), environment.get(PASSWORD))) : Optional.empty());
    }

    private static Optional<String> fault(String address, List<URI> nodes) {
        URI uri;
        try {
            uri = new URI(address);
        } catch (URISyntaxException e) {
            return Optional.of("is no address");
        }
        String scheme = uri.getScheme() == null ? "" : uri.getScheme();
        if (uri.getHost() == null
                || !Set.of("http", "https").contains(scheme)
                || !path(uri).isEmpty()) {
            return Optional.of("must be https://HOST:PORT, one or several with commas between");
        }
        if (uri.getUserInfo() != null) {
            return Optional.of("must hold no name or password; they are read from " + USER + " and " + PASSWORD);
        }
        if (scheme.equals("http") && !THIS_MACHINE.contains(uri.getHost())) {
            return Optional.of("would cross the network in the clear; only https leaves this machine");
        }
        nodes.add(uri);
        return Optional.empty();
    }

    private static String path(URI uri) {
        String path = uri.getPath() == null || uri.getPath().equals("/") ? "" : uri.getPath();
        return path + (uri.getQuery() == null ? "" : uri.getQuery());
    }
}
