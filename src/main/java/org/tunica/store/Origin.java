package org.tunica.store;

/**
 * With what a document was made, so that it can be made again.
 *
 * @param releaseVersion of the rules and knowledge in force
 * @param releaseDigest over every file of that release
 * @param seed of every draw; nought where nothing was drawn
 */
public record Origin(String releaseVersion, String releaseDigest, long seed) {}
