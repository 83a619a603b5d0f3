package org.tunica.similar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.apache.lucene.analysis.standard.StandardAnalyzer;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.NoMergePolicy;
import org.apache.lucene.index.NumericDocValues;
import org.apache.lucene.index.ReaderUtil;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.store.ByteBuffersDirectory;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Retrieval is exact: the same hits in the same order, with the same similarity to the last digit, as looking at each. */
class NearestSearchTest {
    private static final int MOST = 10;
    private static final StandardAnalyzer ANALYZER = new StandardAnalyzer();
    private static final Filters FILTERS = new Filters(ANALYZER);

    @Test
    void twoHundredQuestions_findWhatLookingAtEachFinds() throws IOException {
        compare(4_000, 200, 1);
    }

    @Test
    @Tag("deep")
    void fiveThousandQuestions_findWhatLookingAtEachFinds() throws IOException {
        compare(20_000, 5_000, 2);
    }

    private static void compare(int size, int questions, long seed) throws IOException {
        List<Entry> entries = new ArrayList<>(Entries.draw(size / 2, seed, 0.1));
        entries.addAll(Entries.draw(size / 2, seed + 1, 0.4, size / 2));
        Random random = new Random(seed);
        Profiles profiles = new Profiles(seed + 2, 0.2);
        try (ByteBuffersDirectory directory = new ByteBuffersDirectory();
                IndexWriter writer = writer(directory, false)) {
            for (Entry entry : entries) {
                writer.addDocument(SegmentDocument.of(entry));
            }
            try (DirectoryReader reader = DirectoryReader.open(writer)) {
                BlockCache cache = new BlockCache();
                int found = 0;
                for (int i = 0; i < questions; i++) {
                    Similarity similarity = Profiles.SIMILARITY.weighted(weights(random));
                    SimilarFilter filter = filter(random);
                    Profile query =
                            i % 3 == 0 ? entries.get(random.nextInt(size)).profile() : profiles.next();
                    BruteForce.Answer expected = new BruteForce(similarity, entries).nearest(query, filter, MOST);
                    assertEquals(expected, answer(reader, cache, similarity, query, filter, entries));
                    found += expected.best().size();
                }
                assertTrue(found > questions, "only " + found + " hits in all");
            }
        }
    }

    @Test
    void deletedSegmentsAndNewOnes_areSeenByAReaderOpenedAgainAndByNoOther() throws IOException {
        List<Entry> entries = Entries.draw(3_000, 7, 0.2);
        Profile query = entries.get(0).profile();
        BlockCache cache = new BlockCache();
        try (ByteBuffersDirectory directory = new ByteBuffersDirectory();
                IndexWriter writer = writer(directory, true)) {
            for (Entry entry : entries.subList(0, 2_000)) {
                writer.addDocument(SegmentDocument.of(entry));
            }
            List<Entry> left = new ArrayList<>(entries.subList(0, 2_000));
            try (DirectoryReader before = DirectoryReader.open(writer)) {
                List<Entry> early = List.copyOf(left);
                assertSame(early, answerAll(before, cache, query, entries), query);
                for (int i = 0; i < 2_000; i += 3) {
                    writer.deleteDocuments(
                            new Term(SegmentDocument.CASE, entries.get(i).caseId()));
                    left.remove(entries.get(i));
                }
                for (Entry entry : entries.subList(2_000, 3_000)) {
                    writer.addDocument(SegmentDocument.of(entry));
                    left.add(entry);
                }
                try (DirectoryReader after = DirectoryReader.openIfChanged(before, writer)) {
                    assertSame(left, answerAll(after, cache, query, entries), query);
                    assertSame(early, answerAll(before, cache, query, entries), query);
                    assertEquals(2, cache.size(), "a part that only lost segments keeps its blocks");
                }
            }
        }
        assertEquals(0, cache.size(), "blocks outlive their readers");
    }

    @Test
    void manyAlikeToTheLastDigit_comeInTheOrderOfTheirIds() throws IOException {
        List<Entry> drawn = Entries.draw(500, 11, 0);
        Profile same = drawn.get(0).profile();
        List<Entry> entries = drawn.stream()
                .map(entry -> new Entry(
                        entry.caseId(),
                        entry.where(),
                        entry.place(),
                        same,
                        entry.technique(),
                        entry.closed(),
                        entry.invented(),
                        entry.site(),
                        entry.notes()))
                .toList();
        try (ByteBuffersDirectory directory = new ByteBuffersDirectory();
                IndexWriter writer = writer(directory, true)) {
            for (Entry entry : entries) {
                writer.addDocument(SegmentDocument.of(entry));
                if (entry.where() % 100 == 0) {
                    writer.flush();
                }
            }
            try (DirectoryReader reader = DirectoryReader.open(writer)) {
                BruteForce.Answer answer = answerAll(reader, new BlockCache(), same, entries);
                assertSame(entries, answer, same);
                assertTrue(answer.best().stream().allMatch(hit -> hit.endsWith(" 1.0")), answer::toString);
            }
        }
    }

    private static void assertSame(List<Entry> entries, BruteForce.Answer found, Profile query) {
        assertEquals(new BruteForce(Profiles.SIMILARITY, entries).nearest(query, SimilarFilter.ALL, MOST), found);
    }

    private static BruteForce.Answer answerAll(
            DirectoryReader reader, BlockCache cache, Profile query, List<Entry> entries) throws IOException {
        return answer(reader, cache, Profiles.SIMILARITY, query, SimilarFilter.ALL, entries);
    }

    private static BruteForce.Answer answer(
            DirectoryReader reader,
            BlockCache cache,
            Similarity similarity,
            Profile query,
            SimilarFilter filter,
            List<Entry> entries)
            throws IOException {
        NearestSearch.Nearest nearest = new NearestSearch(new IndexSearcher(reader), cache)
                .search(new Asked(similarity, query), FILTERS.of(filter), MOST);
        List<String> best = new ArrayList<>();
        for (NearestSearch.Near near : nearest.best()) {
            best.add(BruteForce.hit(entries.get((int) where(reader, near.doc())), near.similarity()));
        }
        return new BruteForce.Answer(best, nearest.considered(), nearest.tooLittleKnown());
    }

    private static long where(DirectoryReader reader, int doc) throws IOException {
        LeafReaderContext leaf = reader.leaves().get(ReaderUtil.subIndex(doc, reader.leaves()));
        NumericDocValues where = leaf.reader().getNumericDocValues(SegmentDocument.WHERE);
        assertTrue(where.advanceExact(doc - leaf.docBase));
        return where.longValue();
    }

    private static IndexWriter writer(ByteBuffersDirectory directory, boolean keepParts) throws IOException {
        IndexWriterConfig config = new IndexWriterConfig(ANALYZER).setIndexSort(SegmentDocument.SORT);
        return new IndexWriter(directory, keepParts ? config.setMergePolicy(NoMergePolicy.INSTANCE) : config);
    }

    private static Map<Field, Double> weights(Random random) {
        Map<Field, Double> weights = new EnumMap<>(Field.class);
        for (Field field : Field.values()) {
            weights.put(field, 0.1 + 3 * random.nextDouble());
        }
        return weights;
    }

    private static SimilarFilter filter(Random random) {
        return new SimilarFilter(
                sometimes(random, List.of("laser-1470-radial", "foam-polidocanol", "adhesive")),
                sometimes(random, List.of(SimilarFilter.Outcome.values())),
                sometimes(random, List.of(true, false)),
                sometimes(random, Entries.SITES),
                sometimes(random, List.of("closed", "nerve PAIN", "36 cm", "swelling")));
    }

    private static <T> Optional<T> sometimes(Random random, List<T> choices) {
        return random.nextInt(4) == 0 ? Optional.of(choices.get(random.nextInt(choices.size()))) : Optional.empty();
    }
}
