package org.tunica.web;

import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.LockedException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.authentication.dao.DaoAuthenticationProvider;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.AuthenticationException;
import org.tunica.accounts.UserNames;
import org.tunica.store.User;
import org.tunica.store.UserState;
import org.tunica.store.Users;

/** Signs users of this server in by their password; counts failures, and locks. */
final class LocalSignIn implements AuthenticationProvider {
    private final DaoAuthenticationProvider passwords;
    private final LocalUsers localUsers;
    private final Users users;
    private final SignInRules rules;
    private final SignInCounts counts;

    LocalSignIn(
            DaoAuthenticationProvider passwords,
            LocalUsers localUsers,
            Users users,
            SignInRules rules,
            SignInCounts counts) {
        this.passwords = passwords;
        this.localUsers = localUsers;
        this.users = users;
        this.rules = rules;
        this.counts = counts;
    }

    @Override
    public Authentication authenticate(Authentication typed) {
        String name = UserNames.typed(typed.getName());
        try {
            Authentication known = passwords.authenticate(
                    UsernamePasswordAuthenticationToken.unauthenticated(name, typed.getCredentials()));
            refuseLockedMeanwhile(name);
            users.signedIn(name);
            counts.succeeded();
            return known;
        } catch (AuthenticationException e) {
            counts.refused();
            if (e instanceof BadCredentialsException) {
                failed(name);
            }
            throw e;
        }
    }

    /** Many guesses at once are all looked at before the first is counted; none of them may win after the lock. */
    private void refuseLockedMeanwhile(String name) {
        if (localUsers.loadUserByUsername(name).locked()) {
            throw new LockedException("locked");
        }
    }

    /** Counts a wrong password; somebody without one cannot be locked by strangers. */
    private void failed(String name) {
        users.find(name)
                .filter(LocalSignIn::hasPassword)
                .ifPresent(user -> users.signInFailed(name, rules.mostFailures(), rules.lock()));
    }

    private static boolean hasPassword(User user) {
        return user.state() == UserState.ACTIVE && PasswordHashing.isPassword(user.passwordHash());
    }

    @Override
    public boolean supports(Class<?> authentication) {
        return passwords.supports(authentication);
    }
}
