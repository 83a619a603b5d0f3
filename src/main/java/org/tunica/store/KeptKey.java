package org.tunica.store;

import java.util.Optional;

/**
 * A public key as it stands.
 *
 * @param stamp of its last change: of its end, if it was ended
 * @param end why it was ended
 */
public record KeptKey(UserKey key, Stamp stamp, Optional<KeyEnd> end) {}
