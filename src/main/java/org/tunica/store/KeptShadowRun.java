package org.tunica.store;

/**
 * What a shadow would have said otherwise in one advice.
 *
 * @param shadow version of the release that ran silently
 * @param inForce version of the one that spoke
 * @param body the differences; nothing of the case
 */
public record KeptShadowRun(String shadow, String inForce, String body, Stamp stamp) {}
