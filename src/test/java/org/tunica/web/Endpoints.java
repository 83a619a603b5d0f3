package org.tunica.web;

import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.RequestMappingInfoHandlerMapping;

/** Method and pattern of everything a running server answers, as it knows them of itself. */
final class Endpoints {
    private Endpoints() {}

    /** Those for people and programs with a role; record systems have tokens and no roles: TokenAttackTest. */
    static Set<String> of(WebServer server) {
        Set<String> found = new TreeSet<>();
        for (RequestMappingInfoHandlerMapping mapping : server.mappings()) {
            mapping.getHandlerMethods().keySet().forEach(info -> found.addAll(endpoints(info)));
        }
        found.removeIf(endpoint -> endpoint.matches("\\S+ /(cds-services|fhir).*"));
        return found;
    }

    private static Set<String> endpoints(RequestMappingInfo info) {
        Set<String> methods = new HashSet<>();
        info.getMethodsCondition().getMethods().forEach(method -> methods.add(method.name()));
        Set<String> endpoints = new TreeSet<>();
        for (String pattern : info.getPatternValues()) {
            (methods.isEmpty() ? Stream.of("ANY") : methods.stream())
                    .forEach(method -> endpoints.add(method + " " + pattern));
        }
        return endpoints;
    }
}
