package org.tunica.similar;

import java.util.List;

/**
 * How alike two segments are, and why.
 *
 * @param similarity mean of what is alike by weight over what is known of both, 0 to 1; 0 when nothing is
 * @param knownShare share of the weight of all attributes that is known of both, 0 to 1
 * @param contributions of each attribute known of both; their points sum up to the similarity
 * @param notCompared attributes not known of both
 */
public record Likeness(
        double similarity, double knownShare, List<Contribution> contributions, List<NotCompared> notCompared) {
    public Likeness {
        contributions = List.copyOf(contributions);
        notCompared = List.copyOf(notCompared);
    }

    /**
     * What one attribute gives.
     *
     * @param attribute in words
     * @param here value of the one, with its unit
     * @param there value of the other
     * @param alike local similarity, 0 to 1
     * @param weight of the attribute
     * @param points what it adds to the similarity: alike by weight over the weight known of both
     */
    public record Contribution(
            String attribute, String here, String there, double alike, double weight, double points) {}

    /**
     * An attribute that could not be compared.
     *
     * @param why in words
     */
    public record NotCompared(String attribute, double weight, String why) {}
}
