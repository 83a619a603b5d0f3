package org.tunica.web;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.userdetails.UserDetails;
import org.tunica.store.Role;
import org.tunica.store.User;
import org.tunica.store.UserState;

/**
 * A user of this server, as the library of sign-in wants to see one. Immutable.
 *
 * @param name of the user
 * @param hash of the password at that time; it ends a session when it changes
 */
record LocalUser(String name, String hash, Set<Role> roles, boolean active, boolean locked) implements UserDetails {
    static LocalUser of(User user, Instant now) {
        return new LocalUser(
                user.name(),
                user.passwordHash(),
                user.roles(),
                user.state() == UserState.ACTIVE,
                user.lockedUntil().filter(now::isBefore).isPresent());
    }

    /** Roles as the rules of access know them. */
    static List<GrantedAuthority> authorities(Set<Role> roles) {
        return roles.stream()
                .map(role -> (GrantedAuthority) new SimpleGrantedAuthority(role.word()))
                .toList();
    }

    /** Whether this is the same person with the same password, who may still come in. */
    boolean stillIs(LocalUser now) {
        return now.active && name.equals(now.name) && hash.equals(now.hash);
    }

    @Override
    public Collection<? extends GrantedAuthority> getAuthorities() {
        return authorities(roles);
    }

    @Override
    public String getPassword() {
        return hash;
    }

    @Override
    public String getUsername() {
        return name;
    }

    @Override
    public boolean isEnabled() {
        return active;
    }

    @Override
    public boolean isAccountNonLocked() {
        return !locked;
    }

    /** Without the hash: this text may land in a log. */
    @Override
    public String toString() {
        return "LocalUser[" + name + "]";
    }
}
