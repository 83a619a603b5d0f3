package org.tunica.couch;

import java.util.Optional;
import org.tunica.cluster.EngineAddress;

/**
 * Where the index of past segments stands that several servers share.
 *
 * @param address of the search engine; none where each server has an index of its own
 */
public record SharedIndex(Optional<EngineAddress> address) {}
