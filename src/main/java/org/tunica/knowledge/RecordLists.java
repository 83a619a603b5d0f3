package org.tunica.knowledge;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a change record lists.
 *
 * @param sources of the rules and limits it brings
 * @param rules ids of the rules that name it
 * @param limits ids of the limits that name it
 * @param retires ids that were there before and are not there any more
 */
public record RecordLists(List<String> sources, List<String> rules, List<String> limits, List<String> retires) {
    public RecordLists {
        sources = List.copyOf(sources);
        rules = List.copyOf(rules);
        limits = List.copyOf(limits);
        retires = List.copyOf(retires);
    }

    /**
     * What the record of a change has to list. Files that cannot be read are passed over: an author fills the record in
     * while still at work, and the loading tells every fault.
     *
     * @param before the texts the change began with
     * @param after the same with the change
     * @param number of the record
     */
    public static RecordLists of(Bundle before, Bundle after, String number) {
        Origins was = Origins.in(before);
        Origins is = Origins.in(after);
        Set<String> sources = new TreeSet<>(is.sourcesOf(number));
        return new RecordLists(
                List.copyOf(sources), is.rulesOf(number), is.limitsOf(number), List.copyOf(was.idsNotIn(is)));
    }
}
