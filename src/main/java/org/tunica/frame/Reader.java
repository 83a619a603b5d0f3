package org.tunica.frame;

import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.GrantedAuthority;
import org.tunica.store.Actor;
import org.tunica.store.Role;

/**
 * Who reads a page, as far as the page offers less to some. What is allowed is decided by the address, never here.
 *
 * @param name user name
 * @param roles words of the roles
 */
public record Reader(String name, Set<String> roles) {
    public Reader {
        roles = Set.copyOf(roles);
    }

    /** Whoever signed in. */
    public static Reader of(Authentication who) {
        return new Reader(
                who.getName(),
                who.getAuthorities().stream()
                        .map(GrantedAuthority::getAuthority)
                        .collect(Collectors.toSet()));
    }

    /** Whether the reader has a role. */
    public boolean is(Role role) {
        return roles.contains(role.word());
    }

    /** The reader as one who acts. */
    public Actor actor() {
        return new Actor(name);
    }
}
