package org.tunica.similar;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A question made ready to be put to many segments: the fields it knows with their weights, in the order in which
 * {@link Similarity} sums, so that every similarity is the same to the last digit however it is found.
 */
final class Asked {
    private final List<Term> terms = new ArrayList<>();
    private final double leastKnown;

    Asked(Similarity similarity, Profile query) {
        this.leastKnown = similarity.leastKnownWeight(query);
        for (Field field : similarity.fields()) {
            if (query.knows(field)) {
                terms.add(term(field, similarity, query));
            }
        }
    }

    private static Term term(Field field, Similarity similarity, Profile query) {
        LocalSimilarity local = similarity.local(field);
        int asked = query.at(field.column());
        double weight = similarity.weight(field);
        if (local instanceof LocalSimilarity.Numbers numbers) {
            return new NumberTerm(field.column(), weight, numbers, asked);
        }
        if (local instanceof LocalSimilarity.Words words) {
            return new WordTerm(field.column(), weight, words.table()[asked]);
        }
        LocalSimilarity.Numbers[] numbers = ((LocalSimilarity.Together) local).byWay()[asked];
        int[] settings = new int[numbers.length];
        for (int i = 0; i < settings.length; i++) {
            settings[i] = query.at(Field.settingColumn(i));
        }
        return new SettingsTerm(weight, numbers, asked, settings);
    }

    /** The part of the question that can be put to segments that know the same fields as a block. */
    Ready ready(Blocks blocks, int block) {
        List<Term> comparable =
                terms.stream().filter(term -> term.comparable(blocks, block)).toList();
        double known = 0;
        for (Term term : comparable) {
            known += term.weight();
        }
        return new Ready(comparable.toArray(Term[]::new), known, known < leastKnown || known == 0);
    }

    /**
     * The part of a question that can be put to segments which know the same fields.
     *
     * @param known the weight known of both
     * @param tooLittle whether it is so little that it must not be told how alike they are
     */
    record Ready(Term[] terms, double known, boolean tooLittle) {

        /** The most alike that any segment of a block can be. */
        double atBest(Blocks blocks, int block) {
            double sum = 0;
            for (Term term : terms) {
                sum += term.weight() * term.atBest(blocks, block);
            }
            return sum / known;
        }

        /** How alike each segment of a block is, into {@code scores} from its start. */
        void score(Blocks blocks, int block, double[] scores) {
            int size = blocks.end(block) - blocks.start(block);
            Arrays.fill(scores, 0, size, 0);
            for (Term term : terms) {
                term.add(blocks.columns(), blocks.start(block), size, scores);
            }
            for (int i = 0; i < size; i++) {
                scores[i] /= known;
            }
        }
    }

    /** One field of the question. */
    interface Term {
        double weight();

        /** Whether the field is known of the segments of a block. */
        boolean comparable(Blocks blocks, int block);

        double atBest(Blocks blocks, int block);

        /** Adds weight by likeness for each of some segments. */
        void add(Columns columns, int start, int size, double[] scores);
    }

    private record NumberTerm(int column, double weight, LocalSimilarity.Numbers local, int asked) implements Term {
        @Override
        public boolean comparable(Blocks blocks, int block) {
            return blocks.first(column, block) != Profile.UNKNOWN;
        }

        @Override
        public double atBest(Blocks blocks, int block) {
            return local.of(asked, blocks.nearest(column, block, asked));
        }

        @Override
        public void add(Columns columns, int start, int size, double[] scores) {
            int[] values = columns.values()[column];
            for (int i = 0; i < size; i++) {
                scores[i] += weight * local.of(asked, values[start + i]);
            }
        }
    }

    private record WordTerm(int column, double weight, double[] likeness) implements Term {
        @Override
        public boolean comparable(Blocks blocks, int block) {
            return blocks.first(column, block) != Profile.UNKNOWN;
        }

        @Override
        public double atBest(Blocks blocks, int block) {
            double best = 0;
            for (long left = blocks.words(column, block); left != 0; left &= left - 1) {
                for (int word = Long.numberOfTrailingZeros(left); word < likeness.length; word += Long.SIZE) {
                    best = Math.max(best, likeness[word]);
                }
            }
            return best;
        }

        @Override
        public void add(Columns columns, int start, int size, double[] scores) {
            int[] values = columns.values()[column];
            for (int i = 0; i < size; i++) {
                scores[i] += weight * likeness[values[start + i]];
            }
        }
    }

    private record SettingsTerm(double weight, LocalSimilarity.Numbers[] locals, int way, int[] asked) implements Term {
        @Override
        public boolean comparable(Blocks blocks, int block) {
            return blocks.first(Field.SETTINGS.column(), block) == way;
        }

        @Override
        public double atBest(Blocks blocks, int block) {
            double product = 1;
            for (int i = 0; i < locals.length; i++) {
                product *= locals[i].of(asked[i], blocks.nearest(Field.settingColumn(i), block, asked[i]));
            }
            return product;
        }

        @Override
        public void add(Columns columns, int start, int size, double[] scores) {
            for (int i = 0; i < size; i++) {
                double product = 1;
                for (int number = 0; number < locals.length; number++) {
                    product *=
                            locals[number].of(asked[number], columns.values()[Field.settingColumn(number)][start + i]);
                }
                scores[i] += weight * product;
            }
        }
    }
}
