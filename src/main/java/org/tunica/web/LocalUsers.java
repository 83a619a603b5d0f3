package org.tunica.web;

import java.time.Clock;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UserDetailsPasswordService;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.tunica.store.Actor;
import org.tunica.store.User;
import org.tunica.store.Users;

/** Looks up the users of this server for the library of sign-in. */
final class LocalUsers implements UserDetailsService, UserDetailsPasswordService {
    private final Users users;
    private final Clock clock;

    LocalUsers(Users users, Clock clock) {
        this.users = users;
        this.clock = clock;
    }

    @Override
    public LocalUser loadUserByUsername(String name) {
        return users.find(name).map(this::seen).orElseThrow(() -> new UsernameNotFoundException("no such user"));
    }

    /** Keeps a password hashed anew, when the cost of a hash was raised. */
    @Override
    public UserDetails updatePassword(UserDetails user, String hash) {
        User kept = users.find(user.getUsername()).orElseThrow();
        return seen(users.save(new Actor(kept.name()), kept.withPasswordHash(hash)));
    }

    private LocalUser seen(User user) {
        return LocalUser.of(user, clock.instant());
    }
}
