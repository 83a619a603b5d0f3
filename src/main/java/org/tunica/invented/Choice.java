package org.tunica.invented;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.tunica.casefile.Word;
import org.tunica.knowledge.Distribution;

/** One of several things, by weight. */
final class Choice<T> {
    private final List<T> things;
    private final double[] weights;
    private final double sum;

    private Choice(List<T> things, double[] weights) {
        this.things = things;
        this.weights = weights;
        double sum = 0;
        for (double weight : weights) {
            sum += weight;
        }
        this.sum = sum;
    }

    /** The words of a distribution, each read as what it stands for. */
    static <T> Choice<T> of(Distribution distribution, Function<String, T> read) {
        List<T> things = new ArrayList<>();
        distribution.numbers().keySet().forEach(word -> things.add(read.apply(word)));
        return new Choice<>(
                List.copyOf(things),
                distribution.numbers().values().stream()
                        .mapToDouble(weight -> weight)
                        .toArray());
    }

    /** Words of a closed list. */
    static <E extends Enum<E> & Word> Choice<E> ofWords(Distribution distribution, Class<E> words) {
        return of(distribution, word -> word(word, words));
    }

    /** The constant a word of knowledge/ stands for. */
    static <E extends Enum<E> & Word> E word(String word, Class<E> words) {
        for (E constant : words.getEnumConstants()) {
            if (constant.word().equals(word)) {
                return constant;
            }
        }
        throw new IllegalArgumentException("\"" + word + "\" is no word of " + words.getSimpleName());
    }

    /** What can be drawn. */
    List<T> things() {
        return things;
    }

    T from(Draw draw) {
        double left = draw.fraction() * sum;
        int last = weights.length - 1;
        for (int i = 0; i < last; i++) {
            left -= weights[i];
            if (left < 0) {
                return things.get(i);
            }
        }
        return things.get(last);
    }

    /** One of them with every weight changed by a factor; nothing when all factors are 0. */
    Optional<T> from(Draw draw, ToDoubleFunction<T> factor) {
        double[] kept = new double[weights.length];
        double all = 0;
        for (int i = 0; i < kept.length; i++) {
            kept[i] = weights[i] * factor.applyAsDouble(things.get(i));
            all += kept[i];
        }
        double left = draw.fraction() * all;
        Optional<T> drawn = Optional.empty();
        for (int i = 0; i < kept.length && (left >= 0 || drawn.isEmpty()); i++) {
            if (kept[i] > 0) {
                drawn = Optional.of(things.get(i));
                left -= kept[i];
            }
        }
        return drawn;
    }
}
