package org.tunica.similar;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Words that stand for what is known of a segment, coarsely: a search engine that knows words alone can then add up how alike a
 * segment can be at most. A number is parted into steps, settings into steps of both their numbers.
 *
 * <p>Finer steps make more words to ask for, and a tighter bound.
 */
final class Marks {
    /** Numbers from this step on share one mark. */
    private static final int LAST_STEP = 127;

    private static final int SETTING_STEP = 1_000;
    private static final String NOT_KNOWN = "?";

    private Marks() {}

    /** Steps of a number, in thousandths of its unit. */
    private static int step(Field field) {
        return switch (field) {
            case RELAXED_WALL -> 20;
            case RELAXED_LUMEN -> 250;
            case NERVE_GAP, DEPTH_TO_SKIN -> 500;
            default -> throw new IllegalArgumentException(field + " has no steps");
        };
    }

    /** One mark for each field, known or not, and one for the way of the settings. */
    static List<String> of(Profile profile) {
        List<String> marks = new ArrayList<>();
        for (Field field : Field.values()) {
            marks.add(profile.knows(field) ? mark(field, profile) : unknown(field));
        }
        marks.add(way(profile.at(Field.SETTINGS.column())));
        return marks;
    }

    private static String unknown(Field field) {
        return field.word() + ":" + NOT_KNOWN;
    }

    private static String way(int way) {
        return "way:" + (way == Profile.UNKNOWN ? NOT_KNOWN : Integer.toString(way));
    }

    /** The marks of segments that have nothing to compare with a profile in a field it knows. */
    static List<String> apart(Field field, Profile asked) {
        if (field != Field.SETTINGS) {
            return List.of(unknown(field));
        }
        List<String> others = new ArrayList<>(List.of(way(Profile.UNKNOWN)));
        for (int way = 0; way < Way.values().length; way++) {
            if (way != asked.at(Field.SETTINGS.column())) {
                others.add(way(way));
            }
        }
        return others;
    }

    private static String mark(Field field, Profile profile) {
        int value = profile.at(field.column());
        if (field == Field.SETTINGS) {
            int[] steps = new int[Way.values()[value].numbers().size()];
            for (int i = 0; i < steps.length; i++) {
                steps[i] = at(profile.at(Field.settingColumn(i)), SETTING_STEP);
            }
            return settings(value, steps);
        }
        return word(field, field.numeric() ? at(value, step(field)) : value);
    }

    private static int at(int value, int step) {
        return Math.max(0, Math.min(LAST_STEP, value / step));
    }

    private static String word(Field field, int number) {
        return field.word() + ":" + number;
    }

    private static String settings(int way, int[] steps) {
        StringBuilder word = new StringBuilder(word(Field.SETTINGS, way));
        for (int step : steps) {
            word.append(':').append(step);
        }
        return word.toString();
    }

    /** Every mark of a field that is at all like a profile, with the likeness it can have at best. */
    static Map<String, Double> alike(Field field, Profile asked, LocalSimilarity local) {
        Map<String, Double> alike = new LinkedHashMap<>();
        int value = asked.at(field.column());
        if (local instanceof LocalSimilarity.Numbers numbers) {
            double[] best = best(numbers, value, step(field));
            for (int step = 0; step < best.length; step++) {
                put(alike, word(field, step), best[step]);
            }
        } else if (local instanceof LocalSimilarity.Words words) {
            for (int word = 0; word < words.table().length; word++) {
                put(alike, word(field, word), words.table()[value][word]);
            }
        } else {
            together(asked, value, ((LocalSimilarity.Together) local).byWay()[value], 0, new int[0], 1, alike);
        }
        return alike;
    }

    /** Every pair of steps of the settings of a way, whose likenesses are multiplied. */
    private static void together(
            Profile asked,
            int way,
            LocalSimilarity.Numbers[] numbers,
            int number,
            int[] steps,
            double product,
            Map<String, Double> alike) {
        if (number == numbers.length) {
            put(alike, settings(way, steps), product);
            return;
        }
        double[] best = best(numbers[number], asked.at(Field.settingColumn(number)), SETTING_STEP);
        for (int step = 0; step < best.length; step++) {
            if (best[step] > 0) {
                int[] longer = Arrays.copyOf(steps, number + 1);
                longer[number] = step;
                together(asked, way, numbers, number + 1, longer, product * best[step], alike);
            }
        }
    }

    /** The likeness of a number to the nearest of each step. */
    private static double[] best(LocalSimilarity.Numbers numbers, int asked, int step) {
        double[] best = new double[LAST_STEP + 1];
        for (int i = 0; i <= LAST_STEP; i++) {
            int least = i == 0 ? Integer.MIN_VALUE / 2 : i * step;
            int most = i == LAST_STEP ? Integer.MAX_VALUE / 2 : (i + 1) * step - 1;
            best[i] = numbers.of(asked, Math.max(least, Math.min(most, asked)));
        }
        return best;
    }

    private static void put(Map<String, Double> alike, String mark, double likeness) {
        if (likeness > 0) {
            alike.put(mark, likeness);
        }
    }
}
