package org.tunica.accounts;

import java.util.List;
import java.util.Set;
import org.tunica.store.Role;

/** Roles that must lie with two people: whoever signs a rule did not write it, and two sign. */
public final class RoleConflicts {
    private static final List<Conflict> ALL = List.of(
            new Conflict(
                    Role.CLINICAL_LEAD,
                    Role.SAFETY_OFFICER,
                    "a rule is signed by both, and one person would then sign for two"),
            new Conflict(Role.RULE_AUTHOR, Role.CLINICAL_LEAD, "whoever writes rules must not sign them"),
            new Conflict(Role.RULE_AUTHOR, Role.SAFETY_OFFICER, "whoever writes rules must not sign them"));

    private record Conflict(Role one, Role other, String why) {
        boolean in(Set<Role> roles) {
            return roles.contains(one) && roles.contains(other);
        }

        String says() {
            return one.word() + " and " + other.word() + " cannot lie with one person: " + why;
        }
    }

    private RoleConflicts() {}

    /** Why these roles cannot lie with one person; empty when they can. */
    public static List<String> of(Set<Role> roles) {
        return ALL.stream()
                .filter(conflict -> conflict.in(roles))
                .map(Conflict::says)
                .toList();
    }
}
