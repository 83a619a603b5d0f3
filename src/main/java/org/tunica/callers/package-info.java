/**
 * Who may call from another program: record systems, each known by a signed token (JWT, RFC 7519) of its own.
 *
 * <p>In: the callers a site names, a token and the address that was called. Out: the {@link org.tunica.callers.Caller} whose
 * token it is, or {@link org.tunica.callers.TokenRefused} with the reason, which is for the log alone: who is refused is told
 * nothing. Entry type: {@link org.tunica.callers.TokenCheck}. Knows no veins and no server; may import {@code casefile} for the
 * faults of settings.
 *
 * <p>Decisions. Signatures are checked by a library; what else must hold is checked before, so that no key is fetched for a
 * token that could not pass: algorithm (ES384 or RS384 alone), no key in the token itself, issuer and address of the keys on
 * the site's list, the audience this address and no other, times, tenant. That a token has not been seen before is asked last,
 * of signed tokens only. Keys come from the site's settings or from an address on the site's list; a redirect is not followed.
 */
@NullMarked
package org.tunica.callers;

import org.jspecify.annotations.NullMarked;
