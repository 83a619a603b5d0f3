package org.tunica.physics;

import java.util.Map;

/**
 * Everything computed for one segment. Immutable.
 *
 * @param segment what holds whatever the technique
 * @param options by technique id, in order of id
 */
public record Derived(SegmentNumbers segment, Map<String, OptionNumbers> options) {}
