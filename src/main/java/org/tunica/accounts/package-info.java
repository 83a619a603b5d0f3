/**
 * Who may come in, as long as a clinic keeps its users itself: names, roles, passwords and the links that set them.
 *
 * <p>In: the store and a hash for passwords, which the library at the door brings. Out: {@link org.tunica.accounts.Accounts},
 * and {@link org.tunica.accounts.FirstStart} for the one time when nobody is known yet. Of a link only a digest is kept, in
 * the place of the password it will set; so it is used once, and whoever holds a link has no password meanwhile.
 *
 * <p>Roles that must lie with two people are in {@link org.tunica.accounts.RoleConflicts}. May import {@code casefile} and
 * {@code store}.
 */
@NullMarked
package org.tunica.accounts;

import org.jspecify.annotations.NullMarked;
