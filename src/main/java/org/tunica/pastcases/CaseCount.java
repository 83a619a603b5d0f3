package org.tunica.pastcases;

import java.util.SortedMap;

/**
 * What a file of past cases holds.
 *
 * @param cases lines, each one past case
 * @param invented how many of them are made up
 * @param segments treated segments of all cases
 * @param byTechnique treated segments by id of the technique
 * @param byYear cases by the year of the procedure; without those of unknown year
 * @param digest {@code sha256:} and the digest of the bytes of all lines, each ended by a line feed
 */
public record CaseCount(
        long cases,
        long invented,
        long segments,
        SortedMap<String, Long> byTechnique,
        SortedMap<Integer, Long> byYear,
        String digest) {}
