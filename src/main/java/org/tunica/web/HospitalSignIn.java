package org.tunica.web;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.security.oauth2.client.oidc.userinfo.OidcUserRequest;
import org.springframework.security.oauth2.client.registration.ClientRegistration;
import org.springframework.security.oauth2.client.registration.ClientRegistrationRepository;
import org.springframework.security.oauth2.client.registration.ClientRegistrations;
import org.springframework.security.oauth2.client.registration.InMemoryClientRegistrationRepository;
import org.springframework.security.oauth2.client.registration.SupplierClientRegistrationRepository;
import org.springframework.security.oauth2.client.userinfo.OAuth2UserService;
import org.springframework.security.oauth2.core.OAuth2AuthenticationException;
import org.springframework.security.oauth2.core.OAuth2Error;
import org.springframework.security.oauth2.core.oidc.OidcIdToken;
import org.springframework.security.oauth2.core.oidc.user.OidcUser;
import org.tunica.accounts.RoleConflicts;
import org.tunica.store.Act;
import org.tunica.store.Actor;
import org.tunica.store.AuditTrail;
import org.tunica.store.Role;
import org.tunica.store.Subject;

/** Signs people in whom the hospital's provider of identities vouches for; the library checks its tokens. */
final class HospitalSignIn implements OAuth2UserService<OidcUserRequest, OidcUser> {
    /** The name of the provider in addresses here. */
    static final String REGISTRATION = "hospital";

    private final OpenIdConnect settings;
    private final AuditTrail audit;
    private final SignInCounts counts;

    HospitalSignIn(OpenIdConnect settings, AuditTrail audit, SignInCounts counts) {
        this.settings = settings;
        this.audit = audit;
        this.counts = counts;
    }

    /** What the library has to know of the provider, asked for when somebody first signs in. */
    static ClientRegistrationRepository registrations(OpenIdConnect settings) {
        return new SupplierClientRegistrationRepository(
                () -> new InMemoryClientRegistrationRepository(registration(settings)));
    }

    private static ClientRegistration registration(OpenIdConnect settings) {
        return ClientRegistrations.fromIssuerLocation(settings.issuer())
                .registrationId(REGISTRATION)
                .clientId(settings.clientId())
                .clientSecret(SecretFile.firstLine(settings.clientSecretFile()))
                .scope("openid", "profile")
                .clientSettings(ClientRegistration.ClientSettings.builder()
                        .requireProofKey(true)
                        .build())
                .build();
    }

    @Override
    public OidcUser loadUser(OidcUserRequest request) {
        OidcIdToken token = request.getIdToken();
        try {
            HospitalPerson person = new HospitalPerson(actor(token), roles(token), token);
            audit.note(new Actor(person.getName()), Act.SIGNED_IN, new Subject("user", person.getName()));
            counts.succeeded();
            return person;
        } catch (OAuth2AuthenticationException e) {
            counts.refused();
            throw e;
        }
    }

    private String actor(OidcIdToken token) {
        String name = token.getClaimAsString(settings.nameClaim());
        try {
            return new Actor(HospitalPerson.MARK + (name == null ? " " : name)).id();
        } catch (IllegalArgumentException e) {
            throw refused("the claim " + settings.nameClaim() + " is no name that the audit trail can hold");
        }
    }

    private Set<Role> roles(OidcIdToken token) {
        Set<Role> roles = settings.rolesOf(words(claim(token.getClaims(), settings.roleClaim())));
        if (!RoleConflicts.of(roles).isEmpty()) {
            throw refused(String.join("; ", RoleConflicts.of(roles)));
        }
        return roles;
    }

    /** The claim of that very name, or the one the parts of the name lead to. */
    private static @Nullable Object claim(Map<String, Object> claims, String path) {
        if (claims.containsKey(path)) {
            return claims.get(path);
        }
        Object found = claims;
        for (String step : path.split("\\.")) {
            found = found instanceof Map<?, ?> map ? map.get(step) : null;
        }
        return found;
    }

    private static List<String> words(@Nullable Object claim) {
        if (claim instanceof Collection<?> list) {
            return list.stream().map(String::valueOf).toList();
        }
        return claim instanceof String word ? List.of(word) : List.of();
    }

    private static OAuth2AuthenticationException refused(String why) {
        return new OAuth2AuthenticationException(new OAuth2Error("not_let_in", why, null));
    }
}
