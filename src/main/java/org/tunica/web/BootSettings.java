package org.tunica.web;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Settings of the site as the framework spells them. */
final class BootSettings {
    private BootSettings() {}

    static Map<String, Object> of(ServerSettings settings) {
        Map<String, Object> spelled = new HashMap<>();
        spelled.put("server.address", settings.listening().address());
        spelled.put("server.port", settings.listening().port());
        spelled.putAll(cookie(settings));
        spelled.putAll(proxies(settings.protection()));
        settings.protection().tls().ifPresent(tls -> spelled.putAll(tls(tls)));
        return spelled;
    }

    /** The mark before the name makes browsers refuse the cookie from anywhere else; they honour it over TLS alone. */
    private static Map<String, Object> cookie(ServerSettings settings) {
        boolean secure = settings.protection().given();
        return Map.of(
                "server.servlet.session.timeout",
                settings.signIn().idle().toSeconds() + "s",
                "server.servlet.session.tracking-modes",
                "cookie",
                "server.servlet.session.cookie.name",
                cookieName(settings),
                "server.servlet.session.cookie.path",
                "/",
                "server.servlet.session.cookie.http-only",
                true,
                "server.servlet.session.cookie.secure",
                secure,
                "server.servlet.session.cookie.same-site",
                sameSite(settings));
    }

    static String cookieName(ServerSettings settings) {
        return settings.protection().given() ? "__Host-tunica" : "tunica";
    }

    /** Coming back from the hospital's page is a visit from elsewhere. */
    static String sameSite(ServerSettings settings) {
        return settings.hospital().isPresent() ? "Lax" : "Strict";
    }

    private static Map<String, Object> proxies(Protection protection) {
        if (protection.trustedProxies().isEmpty()) {
            return Map.of("server.forward-headers-strategy", "none");
        }
        return Map.of(
                "server.forward-headers-strategy",
                "native",
                "server.tomcat.remoteip.internal-proxies",
                protection.trustedProxies().stream().map(Pattern::quote).collect(Collectors.joining("|")),
                "server.tomcat.remoteip.protocol-header",
                "X-Forwarded-Proto",
                "server.tomcat.remoteip.host-header",
                "X-Forwarded-Host");
    }

    private static Map<String, Object> tls(Protection.Tls tls) {
        return Map.of(
                "spring.ssl.bundle.jks.server.keystore.location",
                "file:" + tls.keyStore(),
                "spring.ssl.bundle.jks.server.keystore.type",
                "PKCS12",
                "spring.ssl.bundle.jks.server.keystore.password",
                SecretFile.firstLine(tls.passwordFile()),
                "spring.ssl.bundle.jks.server.options.enabled-protocols",
                "TLSv1.3,TLSv1.2",
                "server.ssl.bundle",
                "server");
    }
}
