package org.tunica.web;

import jakarta.servlet.Filter;
import java.time.Clock;
import java.time.Instant;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpMethod;
import org.springframework.http.HttpStatus;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.AnonymousAuthenticationFilter;
import org.springframework.security.web.authentication.logout.LogoutFilter;
import org.springframework.web.servlet.HandlerExceptionResolver;
import org.tunica.Tunica;
import org.tunica.callers.SeenTokens;
import org.tunica.callers.TokenCheck;
import org.tunica.fhir.FhirTranslator;
import org.tunica.fhir.Site;
import org.tunica.store.SeenBook;
import org.tunica.store.Store;

/** What record systems are offered, and who of them is let in. */
@Configuration(proxyBeanMethods = false)
class CallerRules {
    @Bean
    AdviceInTime adviceInTime(Tunica tunica, Clock clock) {
        return new AdviceInTime(tunica, clock);
    }

    /** Reads records that people put in; where the site says nothing of itself, as the standard has it. */
    @Bean
    FhirTranslator translatorOfPages(Tunica tunica, ServerSettings settings) {
        Site site = RecordServices.site(tunica, settings.recordSystems()).orElseGet(() -> Site.unknown(tunica));
        return new FhirTranslator(tunica, site);
    }

    @Bean
    RecordServices recordServices(Tunica tunica, ServerSettings settings, AdviceInTime advice) {
        return RecordServices.of(tunica, settings.recordSystems(), advice);
    }

    @Bean
    HandlerExceptionResolver callProblems() {
        return new CallProblems();
    }

    @Bean
    WebServerFactoryCustomizer<TomcatServletWebServerFactory> bareRefusals() {
        return BareRefusals.customizer();
    }

    @Bean
    Outages outages() {
        return new Outages();
    }

    @Bean
    RequestLimits requestLimits(ServerSettings settings, Clock clock) {
        return new RequestLimits(settings.limits(), clock);
    }

    /** Calls of record systems: a token each, no session, no cookie; what the server can do is told to everyone. */
    @Bean
    @Order(1)
    SecurityFilterChain recordSystems(HttpSecurity http, ServerSettings settings, Store store, Clock clock) {
        RecordSystems known = settings.recordSystems();
        return http.securityMatcher("/cds-services", "/cds-services/**", "/fhir", "/fhir/**")
                .sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .csrf(AbstractHttpConfigurer::disable)
                .headers(headers -> headers.contentSecurityPolicy(
                        policy -> policy.policyDirectives("default-src 'none'; frame-ancestors 'none'")))
                .addFilterBefore(Origins.filter(known.origins()), LogoutFilter.class)
                .addFilterBefore(
                        signIn(known, settings.limits(), seen(store.seenTokens()), clock),
                        AnonymousAuthenticationFilter.class)
                .authorizeHttpRequests(requests -> requests.requestMatchers(
                                HttpMethod.GET, "/fhir/metadata", "/fhir/OperationDefinition/*")
                        .permitAll()
                        .anyRequest()
                        .authenticated())
                .exceptionHandling(refused -> refused.authenticationEntryPoint((request, response, why) -> {
                            response.setHeader("WWW-Authenticate", "Bearer");
                            Refusals.write(request, response, HttpStatus.UNAUTHORIZED, "a valid token is needed");
                        })
                        .accessDeniedHandler((request, response, why) ->
                                Refusals.write(request, response, HttpStatus.FORBIDDEN, "this is not allowed")))
                .build();
    }

    /** A token passes once at all servers over one store, whenever they were started. */
    private static SeenTokens seen(SeenBook book) {
        Instant since = book.since();
        return new SeenTokens() {
            @Override
            public boolean firstTime(String issuer, String id, Instant until) {
                return book.firstTime(issuer, id, until);
            }

            @Override
            public Instant since() {
                return since; // a store is restored before any server opens it
            }
        };
    }

    private static Filter signIn(RecordSystems known, Limits limits, SeenTokens seen, Clock clock) {
        if (known.calls() == RecordSystems.Calls.UNSIGNED_FOR_TESTS) {
            return new UnsignedCalls();
        }
        TokenCheck tokens = new TokenCheck(known.callers(), clock, known.clockSkew(), known.longestTokenLife(), seen);
        return new SignedCalls(tokens, known.baseAddress(), new Rates(limits.perCallerPerMinute(), clock));
    }
}
