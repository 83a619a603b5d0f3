package org.tunica.similar;

import java.util.List;

/**
 * What a search found.
 *
 * @param hits best first; those alike to the last digit stand in the order of their random ids
 * @param considered how many past segments passed the filter
 * @param tooLittleKnown how many of them have too little in common with what was asked to say how alike they are; they are
 *     never among the hits
 */
public record Found(List<Hit> hits, int considered, int tooLittleKnown) {
    public Found {
        hits = List.copyOf(hits);
    }
}
