package org.tunica.web;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tunica.casefile.FieldReader;

/**
 * What stands between the server and a network.
 *
 * @param hosts names under which it is asked, beside those of loopback
 * @param tls its certificate, where it speaks TLS itself
 * @param trustedProxies numeric addresses whose word on client, protocol and host counts; everybody else's is passed over
 */
public record Protection(Set<String> hosts, Optional<Tls> tls, List<String> trustedProxies) {
    /** Nothing: the server stays on loopback. */
    public static final Protection NONE = new Protection(Set.of(), Optional.empty(), List.of());

    private static final String HOST = "[a-z0-9]([a-z0-9-]*[a-z0-9])?(\\.[a-z0-9]([a-z0-9-]*[a-z0-9])?)*";
    private static final String NUMERIC = "[0-9.]{7,15}|[0-9a-f:.]{2,45}";

    /**
     * A certificate with its key.
     *
     * @param keyStore a PKCS #12 file
     * @param passwordFile a file whose first line is its password
     */
    public record Tls(String keyStore, String passwordFile) {
        static Tls read(FieldReader reader) {
            Tls tls = new Tls(reader.requiredText("keyStore"), reader.requiredText("passwordFile"));
            SecretFile.check(reader, "keyStore", tls.keyStore);
            SecretFile.check(reader, "passwordFile", tls.passwordFile);
            reader.done();
            return tls;
        }
    }

    public Protection {
        hosts = Set.copyOf(hosts);
        trustedProxies = List.copyOf(trustedProxies);
    }

    static Protection read(FieldReader reader) {
        Set<String> hosts = new TreeSet<>();
        for (String host : reader.texts("hosts")) {
            if (!host.toLowerCase(Locale.ROOT).matches(HOST)) {
                reader.fault("hosts", "\"" + host + "\" is no name of a host; write it without protocol and port");
            }
            hosts.add(host.toLowerCase(Locale.ROOT));
        }
        List<String> proxies = reader.texts("trustedProxies");
        for (String proxy : proxies) {
            if (!proxy.matches(NUMERIC) || !numeric(proxy)) {
                reader.fault("trustedProxies", "\"" + proxy + "\" is no numeric address such as 192.0.2.7");
            }
        }
        return new Protection(hosts, reader.object("tls").map(Tls::read), proxies);
    }

    private static boolean numeric(String address) {
        try {
            InetAddress.getByName(address);
            return true;
        } catch (UnknownHostException e) {
            return false;
        }
    }

    /** Whether somebody answers for it that nobody reads along. */
    boolean given() {
        return tls.isPresent() || !trustedProxies.isEmpty();
    }
}
