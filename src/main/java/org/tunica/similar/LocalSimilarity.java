package org.tunica.similar;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.tunica.knowledge.Comparison;

/** How alike two known values of one attribute are, 0 to 1: 1 for the same, the same both ways round. */
sealed interface LocalSimilarity {
    /** Of two profiles that both know the field. */
    double of(Field field, Profile a, Profile b);

    /** Of a rule of knowledge/ over the words of its field. */
    static LocalSimilarity of(Comparison comparison, List<String> words) {
        if (comparison instanceof Comparison.Numeric numeric) {
            return Numbers.of(numeric);
        }
        if (comparison instanceof Comparison.Ordinal ordinal) {
            return Words.of(ordinal, words);
        }
        if (comparison instanceof Comparison.Categorical categorical) {
            return Words.of(categorical, words);
        }
        return Together.of((Comparison.Together) comparison);
    }

    /**
     * Numbers, looked up by their difference.
     *
     * @param byDifference likeness at each difference in thousandths; beyond its end none
     * @param upTo values above it count as it, in thousandths
     */
    record Numbers(double[] byDifference, int upTo) implements LocalSimilarity {
        static Numbers of(Comparison.Numeric rule) {
            int range = Math.max(1, Profile.thousandths(rule.range()));
            double[] byDifference = new double[range];
            for (int i = 0; i < range; i++) {
                byDifference[i] = Math.pow(1 - (double) i / range, rule.exponent());
            }
            int upTo = Double.isInfinite(rule.upTo()) ? Integer.MAX_VALUE : Profile.thousandths(rule.upTo());
            return new Numbers(byDifference, upTo);
        }

        double of(int a, int b) {
            int difference = Math.abs(Math.min(a, upTo) - Math.min(b, upTo));
            return difference < byDifference.length ? byDifference[difference] : 0;
        }

        @Override
        public double of(Field field, Profile a, Profile b) {
            return of(a.at(field.column()), b.at(field.column()));
        }
    }

    /**
     * Words, looked up in a table.
     *
     * @param table likeness by the places of both words
     */
    record Words(double[][] table) implements LocalSimilarity {
        static Words of(Comparison.Ordinal rule, List<String> words) {
            double[] steps = words.stream().mapToDouble(rule.steps()::get).toArray();
            double scale = Arrays.stream(steps).max().orElse(0)
                    - Arrays.stream(steps).min().orElse(0);
            double[][] table = new double[steps.length][steps.length];
            for (int i = 0; i < steps.length; i++) {
                for (int j = 0; j < steps.length; j++) {
                    table[i][j] = 1 - Math.abs(steps[i] - steps[j]) / scale;
                }
            }
            return new Words(table);
        }

        static Words of(Comparison.Categorical rule, List<String> words) {
            double[][] table = new double[words.size()][words.size()];
            for (int i = 0; i < table.length; i++) {
                for (int j = 0; j < table.length; j++) {
                    table[i][j] = i == j ? 1 : alike(rule, words.get(i), words.get(j));
                }
            }
            return new Words(table);
        }

        private static double alike(Comparison.Categorical rule, String a, String b) {
            return rule.groups().stream()
                    .filter(group -> group.words().contains(a) && group.words().contains(b))
                    .mapToDouble(Comparison.Group::likeness)
                    .max()
                    .orElse(rule.otherwise());
        }

        @Override
        public double of(Field field, Profile a, Profile b) {
            return table[a.at(field.column())][b.at(field.column())];
        }
    }

    /**
     * Settings of one way, number by number, multiplied.
     *
     * @param byWay the numbers of each way, by its place
     */
    record Together(Numbers[][] byWay) implements LocalSimilarity {
        static Together of(Comparison.Together rule) {
            Numbers[][] byWay = new Numbers[Way.values().length][];
            for (Way way : Way.values()) {
                Map<String, Comparison.Numeric> numbers = rule.ways().get(way.word());
                byWay[way.ordinal()] = way.numbers().stream()
                        .map(numbers::get)
                        .map(Numbers::of)
                        .toArray(Numbers[]::new);
            }
            return new Together(byWay);
        }

        @Override
        public double of(Field field, Profile a, Profile b) {
            Numbers[] numbers = byWay[a.at(field.column())];
            double product = 1;
            for (int i = 0; i < numbers.length; i++) {
                product *= numbers[i].of(a.at(Field.settingColumn(i)), b.at(Field.settingColumn(i)));
            }
            return product;
        }
    }
}
