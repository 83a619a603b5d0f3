package org.tunica.similar;

import java.io.IOException;
import java.io.StringReader;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.standard.StandardAnalyzer;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;

/** What is searched for in notes, cut into words as the notes are. */
public final class SearchWords {
    private SearchWords() {}

    /** The words of a text, each once; none when it holds no letter or digit. */
    public static SortedSet<String> of(String text) {
        try (Analyzer analyzer = new StandardAnalyzer()) {
            return of(text, analyzer);
        }
    }

    static SortedSet<String> of(String text, Analyzer analyzer) {
        SortedSet<String> words = new TreeSet<>();
        try (TokenStream tokens = analyzer.tokenStream(SegmentDocument.NOTES, new StringReader(text))) {
            CharTermAttribute term = tokens.addAttribute(CharTermAttribute.class);
            tokens.reset();
            while (tokens.incrementToken()) {
                words.add(term.toString());
            }
            tokens.end();
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory cannot fail to be read", e);
        }
        return words;
    }
}
