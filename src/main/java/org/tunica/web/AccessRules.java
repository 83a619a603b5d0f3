package org.tunica.web;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;

/** Who may ask what. What stands nowhere here is refused. */
@Configuration(proxyBeanMethods = false)
class AccessRules {
    /** Programs on this machine: no session, no cookie, so nothing a page elsewhere could ride on. */
    @Bean
    SecurityFilterChain programs(HttpSecurity http) {
        return http.sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .csrf(AbstractHttpConfigurer::disable)
                .headers(headers -> headers.contentSecurityPolicy(
                        policy -> policy.policyDirectives("default-src 'none'; frame-ancestors 'none'")))
                .authorizeHttpRequests(requests -> requests.requestMatchers("/api/**", "/server/health/**")
                        .permitAll()
                        .anyRequest()
                        .denyAll())
                .build();
    }
}
