package org.tunica.web;

import java.net.URI;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tunica.casefile.FieldReader;
import org.tunica.store.Role;

/**
 * Sign-in with the accounts of a hospital, by OpenID Connect.
 *
 * @param issuer its address, exactly as it writes it in its tokens
 * @param clientId under which this server is known there
 * @param clientSecretFile a file whose first line is the secret of the client
 * @param nameClaim the claim that names a person for good
 * @param roleClaim the claim that lists what a person is; steps into it are parted by dots
 * @param roles of this server, by the words of that claim
 * @param localAccounts whether users of this server may sign in beside them
 */
public record OpenIdConnect(
        String issuer,
        String clientId,
        String clientSecretFile,
        String nameClaim,
        String roleClaim,
        Map<String, Set<Role>> roles,
        boolean localAccounts) {

    public OpenIdConnect {
        roles = Map.copyOf(roles);
    }

    static OpenIdConnect read(FieldReader reader) {
        OpenIdConnect read = new OpenIdConnect(
                reader.requiredText("issuer"),
                reader.requiredText("clientId"),
                reader.requiredText("clientSecretFile"),
                reader.text("nameClaim").orElse("sub"),
                reader.requiredText("roleClaim"),
                roles(reader),
                reader.flag("localAccounts").orElse(false));
        SecretFile.check(reader, "clientSecretFile", read.clientSecretFile);
        if (!read.issuer.isEmpty() && !safe(read.issuer)) {
            reader.fault("issuer", "must be an https address; http is for tests on this machine");
        }
        reader.done();
        return read;
    }

    private static Map<String, Set<Role>> roles(FieldReader reader) {
        FieldReader words = reader.required("roles", reader.object("roles")).orElseGet(() -> reader.emptyPart("roles"));
        Map<String, Set<Role>> roles = new LinkedHashMap<>();
        for (String word : words.names()) {
            roles.put(word, words.words(word, Role.class).orElse(Set.of()));
        }
        return roles;
    }

    private static boolean safe(String issuer) {
        try {
            URI uri = URI.create(issuer);
            return "https".equals(uri.getScheme()) || ("http".equals(uri.getScheme()) && Loopback.named(uri.getHost()));
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    /** The roles of a person whose claim holds these words; a word nobody mapped gives none. */
    Set<Role> rolesOf(List<String> words) {
        Set<Role> found = new LinkedHashSet<>();
        words.forEach(word -> found.addAll(roles.getOrDefault(word, Set.of())));
        return found.isEmpty() ? Set.of() : EnumSet.copyOf(found);
    }
}
