package org.tunica.similar;

import java.util.List;
import java.util.Optional;
import org.tunica.pastcases.PastCase;

/**
 * What an index elsewhere keeps of one past segment.
 *
 * @param order by what equally alike segments are put in order
 * @param caseNumber of its case, made of the random id of the case
 * @param place of the segment among the treated ones of its case, from 0
 * @param kind what is known of it; {@link Question#tooLittle} tells whether that is enough for a question
 * @param marks what it is like, coarsely, and what is not known; {@link Question#marks} and {@link Question#apart} tell what each
 *     can add
 * @param values what it is like, exactly, for {@link Question#likeness}
 * @param technique id of the technique used
 * @param outcome how it went by the last scan, when one told
 * @param invented whether its case is made up
 * @param site pseudonym of a clinic
 * @param notes of its case
 * @param pastCase its case
 */
public record SegmentRow(
        long order,
        long caseNumber,
        int place,
        String kind,
        List<String> marks,
        List<Integer> values,
        String technique,
        Optional<SimilarFilter.Outcome> outcome,
        boolean invented,
        String site,
        List<String> notes,
        PastCase pastCase) {

    public SegmentRow {
        marks = List.copyOf(marks);
        values = List.copyOf(values);
        notes = List.copyOf(notes);
    }

    static SegmentRow of(Entry entry, PastCase pastCase) {
        return new SegmentRow(
                entry.order(),
                Entry.caseNumber(entry.order()),
                entry.place(),
                Kind.of(entry.profile()).word(),
                Marks.of(entry.profile()),
                entry.profile().values(),
                entry.technique(),
                entry.closed().map(SimilarFilter.Outcome::of),
                entry.invented(),
                entry.site(),
                entry.notes(),
                pastCase);
    }
}
