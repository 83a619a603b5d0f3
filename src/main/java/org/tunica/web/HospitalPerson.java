package org.tunica.web;

import java.util.Set;
import org.springframework.security.oauth2.core.oidc.OidcIdToken;
import org.springframework.security.oauth2.core.oidc.user.DefaultOidcUser;
import org.tunica.store.Role;

/** Somebody who signed in with an account of the hospital. */
final class HospitalPerson extends DefaultOidcUser {
    /** Stands before the name, so that nobody of the hospital is taken for a user of this server. */
    static final String MARK = "oidc:";

    private final String actor;

    HospitalPerson(String actor, Set<Role> roles, OidcIdToken token) {
        super(LocalUser.authorities(roles), token);
        this.actor = actor;
    }

    @Override
    public String getName() {
        return actor;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof HospitalPerson person && person.actor.equals(actor) && super.equals(other);
    }

    @Override
    public int hashCode() {
        return 31 * super.hashCode() + actor.hashCode();
    }
}
