package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.store.Role;

class ServerSettingsTest {
    @TempDir
    private Path folder;

    @Test
    void everySetting_isRead() throws Exception {
        Path secret = Files.writeString(folder.resolve("secret"), "word\n");
        ServerSettings settings = read("""
                format: tunica-server/1
                address: 0.0.0.0
                port: 8443
                hosts: [Tunica.Clinic.example]
                tls: {keyStore: %1$s, passwordFile: %1$s}
                trustedProxies: [192.0.2.7, "2001:db8::7"]
                signIn: {mostFailures: 4, lockMin: 30, idleMin: 20, longestH: 8, linkH: 48, firstLinkMin: 30, hashCost: 13}
                openIdConnect:
                  issuer: https://id.clinic.example/realm
                  clientId: tunica
                  clientSecretFile: %1$s
                  nameClaim: employee
                  roleClaim: groups
                  roles: {vein-doctors: [specialist, meeting-member]}
                  localAccounts: true
                adviceWithoutSignIn: true
                """.formatted(secret));
        assertEquals(new Listening("0.0.0.0", 8443), settings.listening());
        assertEquals(Set.of("tunica.clinic.example"), settings.protection().hosts());
        assertEquals(List.of("192.0.2.7", "2001:db8::7"), settings.protection().trustedProxies());
        assertEquals(Duration.ofMinutes(30), settings.signIn().lock());
        assertEquals(Duration.ofHours(8), settings.signIn().longest());
        assertEquals(
                Set.of(Role.SPECIALIST, Role.MEETING_MEMBER),
                settings.hospital().orElseThrow().roles().get("vein-doctors"));
        assertTrue(settings.passwords());
        assertTrue(settings.adviceWithoutSignIn());
        settings.checkReach();
    }

    @Test
    void nothingSaid_isTheUsual() {
        assertEquals(ServerSettings.usual(), read("format: tunica-server/1\n"));
    }

    @Test
    void everyFault_isToldAtOnce() {
        FaultyInput faulty = assertThrows(FaultyInput.class, () -> read("""
                format: tunica-server/2
                port: 70000
                hosts: ["https://x"]
                tls: {keyStore: /no/such/file}
                trustedProxies: [proxy]
                signIn: {mostFailures: 1, idleMin: 600, longestH: 1, lockHours: 2}
                openIdConnect: {issuer: "http://id.clinic.example", clientId: a, roles: {x: [surgeon]}}
                adress: 127.0.0.1
                """));
        List<String> places = faulty.faults().stream().map(Fault::place).toList();
        for (String place : List.of(
                "server: format",
                "server: port",
                "server: hosts",
                "server: tls.keyStore",
                "server: tls.passwordFile",
                "server: trustedProxies",
                "server: signIn.mostFailures",
                "server: signIn.idleMin",
                "server: signIn.lockHours",
                "server: openIdConnect.issuer",
                "server: openIdConnect.clientSecretFile",
                "server: openIdConnect.roleClaim",
                "server: openIdConnect.roles.x[0]",
                "server: adress")) {
            assertTrue(places.contains(place), place + " is not among " + places);
        }
    }

    private static ServerSettings read(String yaml) {
        return ServerSettings.read("server", yaml.getBytes(StandardCharsets.UTF_8));
    }
}
