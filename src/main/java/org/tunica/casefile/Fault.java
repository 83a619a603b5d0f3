package org.tunica.casefile;

/**
 * One thing wrong with an input.
 *
 * @param place where: a JSON path such as {@code $.limbs[0].segments[1].vein}, or file and key
 * @param says what is wrong, in one sentence, with the nearest known word where there is one
 */
public record Fault(String place, String says) implements Comparable<Fault> {
    @Override
    public int compareTo(Fault other) {
        int byPlace = place.compareTo(other.place);
        return byPlace != 0 ? byPlace : says.compareTo(other.says);
    }

    @Override
    public String toString() {
        return place + ": " + says;
    }
}
