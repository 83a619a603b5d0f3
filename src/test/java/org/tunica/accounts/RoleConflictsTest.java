package org.tunica.accounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tunica.store.Role;

/** Every pair of roles: three must lie with two people, the others may lie with one. */
class RoleConflictsTest {
    private static final Set<Set<Role>> APART = Set.of(
            Set.of(Role.CLINICAL_LEAD, Role.SAFETY_OFFICER),
            Set.of(Role.RULE_AUTHOR, Role.CLINICAL_LEAD),
            Set.of(Role.RULE_AUTHOR, Role.SAFETY_OFFICER));

    @Test
    void everyPair() {
        for (Role one : Role.values()) {
            for (Role other : Role.values()) {
                Set<Role> pair = EnumSet.of(one, other);
                assertEquals(APART.contains(pair), !RoleConflicts.of(pair).isEmpty(), pair.toString());
            }
        }
    }

    @Test
    void allRolesAtOnce_namesEveryConflict() {
        assertEquals(3, RoleConflicts.of(EnumSet.allOf(Role.class)).size());
    }

    @Test
    void conflict_saysWhy() {
        String says =
                RoleConflicts.of(Set.of(Role.RULE_AUTHOR, Role.SAFETY_OFFICER)).get(0);
        assertTrue(
                says.equals("rule-author and safety-officer cannot lie with one person: whoever writes rules must not"
                        + " sign them"),
                says);
    }
}
