/**
 * Keys of people and what they sign with them. Knows nothing of rules or releases but their names.
 *
 * <p>In: a passphrase, a key file {@code tunica-key/1}, the digest of what somebody looked at. Out: a {@link
 * org.tunica.signing.Signature} that says who signed what, as what, when and for which purpose, and a {@link
 * org.tunica.signing.KeyRing} that tells whether it holds.
 *
 * <p>Ed25519 (RFC 8032) comes from the platform. The private half stays with its person: PKCS#8, sealed with AES-256-GCM
 * under a key drawn from the passphrase by PBKDF2-HMAC-SHA256; the head of the file is bound in, so nobody can make the file
 * look like another person's. A signature never covers a bare digest but a {@link org.tunica.signing.Statement} around it,
 * so it cannot be moved to another release, role, day or purpose. A key that was withdrawn keeps what it signed before;
 * one that fell into other hands keeps nothing.
 *
 * <p>May import {@code casefile}. Home of cryptography.
 */
@NullMarked
package org.tunica.signing;

import org.jspecify.annotations.NullMarked;
