package org.tunica.web;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.http.HttpMethod;
import org.tunica.casefile.Word;
import org.tunica.store.Role;

/**
 * Who may use an address.
 *
 * @param pattern of the path
 * @param roles of which one is needed
 */
record Permission(HttpMethod method, String pattern, Set<Role> roles) {
    private static final Set<Role> ALL_BUT_ADMINISTRATOR = EnumSet.complementOf(EnumSet.of(Role.ADMINISTRATOR));

    /** Whoever may review, sign or judge; who writes rules does none of it, nor who only looks after the server. */
    private static final Set<Role> SIGNERS =
            EnumSet.of(Role.SPECIALIST, Role.MEETING_MEMBER, Role.CLINICAL_LEAD, Role.SAFETY_OFFICER);

    /** What people may do, by role; the first that fits counts, and what fits none is refused. */
    static final List<Permission> OF_PEOPLE = List.of(
            of(HttpMethod.GET, "/cases/new", Set.of(Role.SPECIALIST)),
            of(HttpMethod.POST, "/cases/new", Set.of(Role.SPECIALIST)),
            of(HttpMethod.GET, "/cases/import", Set.of(Role.SPECIALIST)),
            of(HttpMethod.POST, "/cases/import", Set.of(Role.SPECIALIST)),
            of(HttpMethod.POST, "/cases/*/choices/*", Set.of(Role.SPECIALIST)),
            of(HttpMethod.GET, "/cases/*/edit", Set.of(Role.SPECIALIST)),
            of(HttpMethod.POST, "/cases/*/edit", Set.of(Role.SPECIALIST)),
            of(HttpMethod.GET, "/cases/**", Set.of(Role.SPECIALIST, Role.MEETING_MEMBER)),
            of(HttpMethod.GET, "/window.js", Set.of(Role.SPECIALIST, Role.MEETING_MEMBER)),
            of(HttpMethod.POST, "/cases/*/plan", Set.of(Role.SPECIALIST)),
            of(HttpMethod.POST, "/cases/*/plan/*/sessions/*/delivered", Set.of(Role.SPECIALIST)),
            of(HttpMethod.POST, "/cases/*/follow-up", Set.of(Role.SPECIALIST)),
            of(HttpMethod.POST, "/cases/*/past", Set.of(Role.SPECIALIST)),
            of(HttpMethod.GET, "/past/**", Set.of(Role.SPECIALIST, Role.MEETING_MEMBER)),
            of(HttpMethod.POST, "/past/**", Set.of(Role.SPECIALIST, Role.MEETING_MEMBER)),
            of(HttpMethod.GET, "/results/**", ALL_BUT_ADMINISTRATOR),
            of(HttpMethod.GET, "/api/results", ALL_BUT_ADMINISTRATOR),
            of(HttpMethod.POST, "/cases/*/meeting", Set.of(Role.SPECIALIST, Role.MEETING_MEMBER)),
            of(HttpMethod.GET, "/meeting/**", Set.of(Role.SPECIALIST, Role.MEETING_MEMBER)),
            of(HttpMethod.POST, "/meeting/**", Set.of(Role.SPECIALIST, Role.MEETING_MEMBER)),
            of(HttpMethod.POST, "/api/advice", ALL_BUT_ADMINISTRATOR),
            of(HttpMethod.POST, "/api/plan", ALL_BUT_ADMINISTRATOR),
            of(HttpMethod.GET, "/api/cases/**", Set.of(Role.SPECIALIST, Role.MEETING_MEMBER)),
            of(HttpMethod.PUT, "/api/cases/*", Set.of(Role.SPECIALIST)),
            of(HttpMethod.POST, "/api/cases/*/*", Set.of(Role.SPECIALIST)),
            of(HttpMethod.GET, "/api/audit/**", Set.of(Role.ADMINISTRATOR, Role.SAFETY_OFFICER)),
            of(HttpMethod.POST, "/api/governance/changes/*/withdrawal", Set.of(Role.RULE_AUTHOR)),
            of(HttpMethod.POST, "/api/governance/releases/*/signatures", SIGNERS),
            of(HttpMethod.POST, "/api/governance/feedback/*/judgements", SIGNERS),
            of(HttpMethod.GET, "/api/governance/**", ALL_BUT_ADMINISTRATOR),
            of(HttpMethod.GET, "/governance/**", ALL_BUT_ADMINISTRATOR),
            of(HttpMethod.POST, "/governance/changes", Set.of(Role.RULE_AUTHOR)),
            of(HttpMethod.POST, "/governance/changes/*/*", Set.of(Role.RULE_AUTHOR)),
            of(HttpMethod.POST, "/governance/feedback/*", SIGNERS),
            of(HttpMethod.POST, "/governance/releases/*/signatures", SIGNERS),
            of(HttpMethod.POST, "/governance/releases/*/by-author/*", Set.of(Role.RULE_AUTHOR)),
            of(HttpMethod.POST, "/governance/releases/*/by-lead/*", Set.of(Role.CLINICAL_LEAD)),
            of(HttpMethod.POST, "/governance/releases/*/by-either/*", Set.of(Role.CLINICAL_LEAD, Role.SAFETY_OFFICER)),
            of(HttpMethod.GET, "/api/users/**", Set.of(Role.ADMINISTRATOR)),
            of(HttpMethod.PUT, "/api/users/*", Set.of(Role.ADMINISTRATOR)),
            of(HttpMethod.POST, "/api/users/*/link", Set.of(Role.ADMINISTRATOR)));

    /** Every role, as the rules of access spell it. */
    static final Set<String> ROLES =
            Arrays.stream(Role.values()).map(Word::word).collect(Collectors.toSet());

    Permission {
        roles = Set.copyOf(roles);
    }

    private static Permission of(HttpMethod method, String pattern, Set<Role> roles) {
        return new Permission(method, pattern, roles);
    }

    /** Whether an address of the table is open to somebody with these authorities. */
    static boolean opens(HttpMethod method, String pattern, Set<String> authorities) {
        return OF_PEOPLE.stream()
                .filter(permission -> permission.method().equals(method)
                        && permission.pattern().equals(pattern))
                .anyMatch(permission -> permission.allows(authorities));
    }

    String[] authorities() {
        return roles.stream().map(Word::word).toArray(String[]::new);
    }

    /** Whether somebody with these authorities may. */
    boolean allows(Set<String> authorities) {
        return Arrays.stream(authorities()).anyMatch(authorities::contains);
    }
}
