package org.tunica.web;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the addresses of people do, for the page that lists them. */
final class Places {
    private static final Map<String, String> SAYS = Map.of(
            "POST /api/advice", "advice for a case sent along; nothing of it is kept",
            "POST /api/plan", "sessions planned for a case sent along; nothing of it is kept",
            "GET /api/cases/**", "kept cases, their versions, and what was made from them",
            "PUT /api/cases/*", "save a case",
            "POST /api/cases/*/*", "make and keep advice, plan, record with note, follow-up",
            "GET /api/results", "results of the past cases released here",
            "GET /api/audit/**", "the audit trail",
            "GET /api/users/**", "the users of this server",
            "PUT /api/users/*", "add a user, or change roles",
            "POST /api/users/*/link", "a new link to set a password");

    private Places() {}

    static List<StartPage.Place> openTo(Set<String> roles) {
        return Stream.concat(
                        Permission.OF_PEOPLE.stream()
                                .filter(permission ->
                                        permission.pattern().startsWith("/api/") && permission.allows(roles))
                                .map(permission -> permission.method() + " " + permission.pattern())
                                .map(address -> new StartPage.Place(address, SAYS.getOrDefault(address, ""))),
                        Stream.of(new StartPage.Place("GET /api/schemas/*", "the JSON Schemas of what is sent")))
                .collect(Collectors.toList());
    }
}
