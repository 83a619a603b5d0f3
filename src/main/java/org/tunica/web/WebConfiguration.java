package org.tunica.web;

import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.boot.security.autoconfigure.UserDetailsServiceAutoConfiguration;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.springframework.context.annotation.PropertySource;

/** What the server is made of. */
@Configuration(proxyBeanMethods = false)
@EnableAutoConfiguration(exclude = UserDetailsServiceAutoConfiguration.class)
@PropertySource("classpath:web/server.properties")
@Import({
    ApiController.class,
    Problems.class,
    AccessRules.class,
    CallerRules.class,
    HookController.class,
    RecordController.class,
    BodyLimit.class
})
class WebConfiguration {}
