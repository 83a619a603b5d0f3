package org.tunica.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URI;
import java.time.Clock;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpMethod;
import org.springframework.security.authorization.AuthorityAuthorizationManager;
import org.springframework.security.authorization.AuthorizationDecision;
import org.springframework.security.authorization.AuthorizationManager;
import org.springframework.security.authorization.AuthorizationManagers;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.annotation.web.configurers.AuthorizeHttpRequestsConfigurer;
import org.springframework.security.config.annotation.web.configurers.RequestCacheConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.oauth2.client.oidc.web.logout.OidcClientInitiatedLogoutSuccessHandler;
import org.springframework.security.oauth2.client.registration.ClientRegistrationRepository;
import org.springframework.security.web.DefaultRedirectStrategy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.RequestAuthorizationContext;
import org.springframework.security.web.context.SecurityContextHolderFilter;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.tunica.store.Role;
import org.tunica.store.Store;

/** Who may ask what. What stands nowhere here is refused. */
@Configuration(proxyBeanMethods = false)
class AccessRules {
    /** Behind every other chain: it takes whatever they leave. */
    static final int LAST = 1_000;

    /** Where nobody needs to be known. */
    private static final String[] OPEN = {
        "/sign-in",
        "/signed-out",
        "/look.css",
        "/first-start/*",
        "/password/*/*",
        "/api/session",
        "/api/schemas/*",
        "/api",
        "/api/openapi.json",
        "/server/health/**"
    };

    /**
     * Programs on this machine that want an advice of which nothing is kept: no session, no cookie, so nothing a page
     * elsewhere could ride on. A browser tells by its headers that it is none.
     */
    @Bean
    @Order(LAST - 1)
    SecurityFilterChain programs(HttpSecurity http, ServerSettings settings) {
        return http.securityMatcher(request -> settings.adviceWithoutSignIn() && program(request))
                .sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .csrf(AbstractHttpConfigurer::disable)
                .headers(headers -> headers.contentSecurityPolicy(
                        policy -> policy.policyDirectives("default-src 'none'; frame-ancestors 'none'")))
                .authorizeHttpRequests(requests -> requests.anyRequest().permitAll())
                .build();
    }

    private static boolean program(HttpServletRequest request) {
        return HttpMethod.POST.matches(request.getMethod())
                && (request.getRequestURI().equals("/api/advice")
                        || request.getRequestURI().equals("/api/plan"))
                && Loopback.is(request.getRemoteAddr())
                && request.getHeader("Origin") == null
                && request.getHeader("Cookie") == null;
    }

    /** People, who sign in. */
    @Bean
    @Order(LAST)
    SecurityFilterChain people(
            HttpSecurity http,
            ServerSettings settings,
            Store store,
            Clock clock,
            ObjectProvider<LocalSignIn> localSignIn,
            ObjectProvider<HospitalSignIn> hospitalSignIn,
            ObjectProvider<ClientRegistrationRepository> registrations) {
        http.addFilterAfter(
                        new StillWelcome(store.users(), settings.signIn(), clock), SecurityContextHolderFilter.class)
                .requestCache(RequestCacheConfigurer::disable)
                .headers(headers -> headers.contentSecurityPolicy(
                                policy -> policy.policyDirectives(contentPolicy(settings)))
                        .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.NO_REFERRER)))
                .exceptionHandling(refusing ->
                        refusing.authenticationEntryPoint(new NotSignedIn()).accessDeniedHandler(new NotAllowed()))
                .authorizeHttpRequests(AccessRules::table);
        localSignIn.ifAvailable(signIn -> passwords(http.authenticationProvider(signIn)));
        hospitalSignIn.ifAvailable(signIn -> hospital(http, signIn));
        http.logout(leaving -> leaving.logoutUrl("/sign-out")
                .logoutSuccessHandler(new SignedOut(store.audit(), leavingHospital(registrations))));
        return http.build();
    }

    private static void table(
            AuthorizeHttpRequestsConfigurer<HttpSecurity>.AuthorizationManagerRequestMatcherRegistry requests) {
        requests.requestMatchers(OPEN).permitAll();
        for (Permission permission : Permission.OF_PEOPLE) {
            requests.requestMatchers(permission.method(), permission.pattern())
                    .hasAnyAuthority(permission.authorities());
        }
        requests.requestMatchers(HttpMethod.GET, "/server/prometheus").access(onThisMachineOrAdministrator());
        requests.requestMatchers("/", "/my-password").authenticated();
        requests.anyRequest().denyAll();
    }

    private static AuthorizationManager<RequestAuthorizationContext> onThisMachineOrAdministrator() {
        return AuthorizationManagers.anyOf(
                (who, context) -> new AuthorizationDecision(
                        Loopback.is(context.getRequest().getRemoteAddr())),
                AuthorityAuthorizationManager.hasAuthority(Role.ADMINISTRATOR.word()));
    }

    /** Nothing of why is kept in the session: what was typed would be kept with it. */
    private static void refused(HttpServletRequest request, HttpServletResponse response, AuthenticationException why)
            throws IOException {
        new DefaultRedirectStrategy().sendRedirect(request, response, "/sign-in?refused");
    }

    private static void passwords(HttpSecurity http) {
        http.formLogin(form -> form.loginPage("/sign-in")
                .usernameParameter("name")
                .passwordParameter("password")
                .defaultSuccessUrl("/", true)
                .failureHandler(AccessRules::refused));
    }

    private static void hospital(HttpSecurity http, HospitalSignIn signIn) {
        http.oauth2Login(login -> login.loginPage("/sign-in")
                .userInfoEndpoint(person -> person.oidcUserService(signIn))
                .defaultSuccessUrl("/", true)
                .failureHandler(AccessRules::refused));
    }

    private static OidcClientInitiatedLogoutSuccessHandler leavingHospital(
            ObjectProvider<ClientRegistrationRepository> registrations) {
        OidcClientInitiatedLogoutSuccessHandler leaving =
                new OidcClientInitiatedLogoutSuccessHandler(registrations.getIfAvailable(() -> id -> null));
        leaving.setDefaultTargetUrl("/signed-out");
        leaving.setPostLogoutRedirectUri("{baseUrl}/signed-out");
        return leaving;
    }

    /** Forms go here alone, or on to the hospital when somebody signs out there. */
    private static String contentPolicy(ServerSettings settings) {
        String elsewhere = settings.hospital()
                .map(hospital -> URI.create(hospital.issuer()))
                .map(issuer -> " " + issuer.getScheme() + "://" + issuer.getAuthority())
                .orElse("");
        return "default-src 'self'; object-src 'none'; base-uri 'none'; frame-ancestors 'none'; form-action 'self'"
                + elsewhere;
    }
}
