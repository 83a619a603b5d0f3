package org.tunica.similar;

import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.MatchAllDocsQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;

/** A filter as a query of the index. */
final class Filters {
    private final Analyzer analyzer;

    Filters(Analyzer analyzer) {
        this.analyzer = analyzer;
    }

    /** What must hold; everything when nothing is asked. */
    Query of(SimilarFilter filter) {
        BooleanQuery.Builder all = new BooleanQuery.Builder();
        filter.technique().ifPresent(id -> must(all, SegmentDocument.TECHNIQUE, id));
        filter.outcome().ifPresent(outcome -> must(all, SegmentDocument.OUTCOME, outcome.word()));
        filter.invented().ifPresent(flag -> must(all, SegmentDocument.INVENTED, Boolean.toString(flag)));
        filter.site().ifPresent(site -> must(all, SegmentDocument.SITE, site));
        filter.words().ifPresent(words -> all.add(notes(words), BooleanClause.Occur.FILTER));
        BooleanQuery query = all.build();
        return query.clauses().isEmpty() ? new MatchAllDocsQuery() : query;
    }

    private static void must(BooleanQuery.Builder all, String field, String value) {
        all.add(new TermQuery(new Term(field, value)), BooleanClause.Occur.FILTER);
    }

    /** Notes that hold each of some words; words of no letter or digit match nothing. */
    Query notes(String words) {
        BooleanQuery.Builder query = new BooleanQuery.Builder();
        SearchWords.of(words, analyzer)
                .forEach(term ->
                        query.add(new TermQuery(new Term(SegmentDocument.NOTES, term)), BooleanClause.Occur.MUST));
        return query.build();
    }
}
