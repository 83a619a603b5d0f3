package org.tunica.web;

import io.micrometer.core.instrument.MeterRegistry;
import java.time.Clock;
import java.util.List;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.authentication.dao.DaoAuthenticationProvider;
import org.springframework.security.web.firewall.StrictHttpFirewall;
import org.tunica.accounts.Accounts;
import org.tunica.accounts.FirstStart;
import org.tunica.store.Store;

/** What lets people in: accounts, password hash, and the names under which this server answers at all. */
@Configuration(proxyBeanMethods = false)
class Doors {
    @Bean
    PasswordHashing passwordHashing(ServerSettings settings) {
        return new PasswordHashing(settings.signIn().hashCost());
    }

    @Bean
    Accounts accounts(Store store, PasswordHashing hash, ServerSettings settings, Clock clock) {
        return new Accounts(store, hash, settings.signIn().linkLife(), clock);
    }

    @Bean
    FirstStart firstStart(Store store, Accounts accounts, ServerSettings settings, Clock clock) {
        return new FirstStart(store, accounts, settings.signIn().firstLinkLife(), clock);
    }

    @Bean
    SignInCounts signInCounts(MeterRegistry meters) {
        return new SignInCounts(meters);
    }

    /** Signs users of this server in, where they may. */
    static LocalSignIn localSignIn(
            Store store, PasswordHashing hash, ServerSettings settings, SignInCounts counts, Clock clock) {
        LocalUsers users = new LocalUsers(store.users(), clock);
        DaoAuthenticationProvider passwords = new DaoAuthenticationProvider(users);
        passwords.setPasswordEncoder(hash.encoder());
        passwords.setUserDetailsPasswordService(users);
        return new LocalSignIn(passwords, users, store.users(), settings.signIn(), counts);
    }

    /**
     * Answers only under names that are its own: a page elsewhere could else make a browser on this machine ask it under a
     * name of that page, and read the answer.
     */
    @Bean
    StrictHttpFirewall ownNames(ServerSettings settings) {
        List<String> bound = List.of(settings.listening().address());
        StrictHttpFirewall firewall = new StrictHttpFirewall();
        firewall.setAllowedHostnames(host -> Loopback.named(host)
                || bound.contains(host)
                || settings.protection().hosts().contains(host));
        return firewall;
    }
}
