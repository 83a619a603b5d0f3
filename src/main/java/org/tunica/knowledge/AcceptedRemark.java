package org.tunica.knowledge;

import java.util.List;

/**
 * A remark of the review of rules that people looked at and let stand.
 *
 * @param remark its kind in words, as the review prints it
 * @param rules ids of the rules it is about, in any order
 * @param why why it may stand
 */
public record AcceptedRemark(String id, String remark, List<String> rules, String why) {
    public AcceptedRemark {
        rules = List.copyOf(rules);
    }
}
