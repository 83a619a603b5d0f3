package org.tunica.similar;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.standard.StandardAnalyzer;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.NumericDocValues;
import org.apache.lucene.index.ReaderUtil;
import org.apache.lucene.search.BooleanClause;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.Sort;
import org.apache.lucene.search.SortField;
import org.apache.lucene.search.TopFieldDocs;
import org.apache.lucene.store.ByteBuffersDirectory;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;

/** An index of past segments on this machine, opened for searching. */
final class CaseIndex implements SegmentIndex {
    /** Counted up whenever what is kept of a segment, or how, changes. */
    static final int SCHEMA = 1;

    /** The library tells on the error stream how it could run faster on newer machines; nobody asked. */
    private static final Logger LIBRARY = Logger.getLogger("org.apache.lucene");

    static {
        LIBRARY.setLevel(Level.SEVERE);
    }

    private static final int MEMORY_MB = 64;
    private static final Sort BY_WORDS =
            new Sort(SortField.FIELD_SCORE, new SortField(SegmentDocument.ORDER, SortField.Type.LONG));

    private final Directory directory;
    private final DirectoryReader reader;
    private final Analyzer analyzer = new StandardAnalyzer();
    private final BlockCache cache = new BlockCache();

    /** Hands every entry to an index that is being built. */
    interface Filling {
        void into(Consumer<Entry> index);
    }

    private CaseIndex(Directory directory, DirectoryReader reader) throws IOException {
        this.directory = directory;
        this.reader = reader;
        for (LeafReaderContext leaf : reader.leaves()) {
            cache.of(leaf.reader());
        }
    }

    /** An index that is kept nowhere. */
    static CaseIndex inMemory(Filling filling) throws IOException {
        Directory directory = new ByteBuffersDirectory();
        fill(directory, filling);
        return new CaseIndex(directory, DirectoryReader.open(directory));
    }

    /**
     * Opens a finished index and checks every byte of it.
     *
     * @throws IOException when there is none, or it is damaged
     */
    static CaseIndex open(Path folder) throws IOException {
        Directory directory = FSDirectory.open(folder);
        try {
            DirectoryReader reader = DirectoryReader.open(directory);
            for (LeafReaderContext leaf : reader.leaves()) {
                leaf.reader().checkIntegrity();
            }
            return new CaseIndex(directory, reader);
        } catch (IOException | RuntimeException e) {
            directory.close();
            throw e instanceof IOException damaged ? damaged : new IOException(e);
        }
    }

    /** Builds an index whole. */
    static void fill(Directory directory, Filling filling) throws IOException {
        IndexWriterConfig config = new IndexWriterConfig(new StandardAnalyzer())
                .setIndexSort(SegmentDocument.SORT)
                .setRAMBufferSizeMB(MEMORY_MB);
        try (IndexWriter writer = new IndexWriter(directory, config)) {
            try {
                filling.into(entry -> add(writer, entry));
            } catch (Unwritable e) {
                throw e.why;
            } catch (RuntimeException e) {
                writer.rollback();
                throw e;
            }
            writer.forceMerge(1);
            writer.commit();
        }
    }

    private static void add(IndexWriter writer, Entry entry) {
        try {
            writer.addDocument(SegmentDocument.of(entry));
        } catch (IOException e) {
            throw new Unwritable(e);
        }
    }

    /** Carries a failure of the disk through a visitor. */
    private static final class Unwritable extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final IOException why;

        Unwritable(IOException why) {
            super(why);
            this.why = why;
        }
    }

    @Override
    public int size() {
        return reader.numDocs();
    }

    @Override
    public int invented() {
        SimilarFilter madeUp = new SimilarFilter(
                Optional.empty(), Optional.empty(), Optional.of(true), Optional.empty(), Optional.empty());
        return read(() -> new IndexSearcher(reader).count(new Filters(analyzer).of(madeUp)));
    }

    @Override
    public Places nearest(Question question, SimilarFilter filter, int most) {
        return read(() -> nearest(question.asked(), filter, most));
    }

    @Override
    public Places byWords(String words, SimilarFilter filter, int most) {
        return read(() -> fitting(words, filter, most));
    }

    private interface Reading<T> {
        T run() throws IOException;
    }

    private static <T> T read(Reading<T> reading) {
        try {
            return reading.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Places nearest(Asked asked, SimilarFilter filter, int most) throws IOException {
        NearestSearch.Nearest nearest = new NearestSearch(new IndexSearcher(reader), cache)
                .search(asked, new Filters(analyzer).of(filter), most);
        List<At> best = new ArrayList<>();
        for (NearestSearch.Near near : nearest.best()) {
            best.add(at(near.doc(), near.similarity()));
        }
        return new Places(best, nearest.considered(), nearest.tooLittleKnown());
    }

    private Places fitting(String words, SimilarFilter filter, int most) throws IOException {
        Filters filters = new Filters(analyzer);
        IndexSearcher searcher = new IndexSearcher(reader);
        BooleanQuery query = new BooleanQuery.Builder()
                .add(filters.notes(words), BooleanClause.Occur.MUST)
                .add(filters.of(filter), BooleanClause.Occur.FILTER)
                .build();
        TopFieldDocs found = searcher.search(query, most, BY_WORDS, true);
        List<At> best = new ArrayList<>();
        for (ScoreDoc doc : found.scoreDocs) {
            best.add(at(doc.doc, doc.score));
        }
        return new Places(best, searcher.count(query), 0);
    }

    private At at(int doc, double score) throws IOException {
        LeafReaderContext leaf = reader.leaves().get(ReaderUtil.subIndex(doc, reader.leaves()));
        return new At(
                value(leaf, doc, SegmentDocument.WHERE), Entry.place(value(leaf, doc, SegmentDocument.ORDER)), score);
    }

    private static long value(LeafReaderContext leaf, int doc, String field) throws IOException {
        NumericDocValues values = leaf.reader().getNumericDocValues(field);
        if (values == null || !values.advanceExact(doc - leaf.docBase)) {
            throw new IOException("the index lacks " + field);
        }
        return values.longValue();
    }

    @Override
    public void close() {
        try {
            reader.close();
            directory.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
