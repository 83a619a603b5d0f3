package org.tunica.web;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** This machine, as seen from itself. */
final class Loopback {
    /** Names a browser may use for it. */
    static final Set<String> NAMES = Set.of("localhost", "127.0.0.1", "[::1]", "0:0:0:0:0:0:0:1", "[0:0:0:0:0:0:0:1]");

    private Loopback() {}

    /** Whether a host of an address is this machine by its very name. */
    static boolean named(@Nullable String host) {
        return host != null && NAMES.contains(host);
    }

    /** Whether an address, numeric or by name, is one that only this machine reaches. */
    static boolean is(String address) {
        try {
            return InetAddress.getByName(address).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }
}
