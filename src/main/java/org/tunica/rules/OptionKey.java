package org.tunica.rules;

/**
 * One technique considered for one segment.
 *
 * @param segmentRef the segment's name in the case
 * @param techniqueId the technique's id
 */
public record OptionKey(String segmentRef, String techniqueId) implements Comparable<OptionKey> {
    @Override
    public int compareTo(OptionKey other) {
        int bySegment = segmentRef.compareTo(other.segmentRef);
        return bySegment != 0 ? bySegment : techniqueId.compareTo(other.techniqueId);
    }

    @Override
    public String toString() {
        return segmentRef + "/" + techniqueId;
    }
}
