package org.tunica.couch;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.tunica.casefile.Word;
import org.tunica.couch.Ask.Choice;

/**
 * Reads what a form asks off the components of a record of the contract.
 *
 * @param apart types that have a block of their own in the form, or are filled in by the program
 * @param written types that are records here and one text in the contract
 */
record AskReader(AskWords words, Set<Class<?>> apart, Set<Class<?>> written) {
    private static final Set<Class<?>> NUMBERS =
            Set.of(OptionalDouble.class, OptionalInt.class, double.class, int.class);

    AskReader {
        apart = Set.copyOf(apart);
        written = Set.copyOf(written);
    }

    List<Ask> asks(Class<?> record, String path) {
        List<Ask> asks = new ArrayList<>();
        add(asks, record, path, "");
        return asks;
    }

    private void add(List<Ask> asks, Class<?> record, String path, String inside) {
        for (RecordComponent component : record.getRecordComponents()) {
            if (!component.getName().equals("format")) {
                add(asks, component.getGenericType(), path, inside + component.getName(), true);
            }
        }
    }

    private void add(List<Ask> asks, Type type, String path, String field, boolean required) {
        if (type instanceof ParameterizedType some && some.getRawType() == Optional.class) {
            add(asks, some.getActualTypeArguments()[0], path, field, false);
        } else if (type instanceof ParameterizedType some) {
            several(some, path, field).ifPresent(asks::add);
        } else if (type instanceof Class<?> one && one.isRecord() && !written.contains(one)) {
            if (!apart.contains(one)) {
                add(asks, one, path, field + ".");
            }
        } else {
            asks.add(single((Class<?>) type, path, field, required));
        }
    }

    /** A list or a set; legs and segments have blocks of their own. */
    private Optional<Ask> several(ParameterizedType type, String path, String field) {
        Class<?> element = (Class<?>) type.getActualTypeArguments()[0];
        if (apart.contains(element)) {
            return Optional.empty();
        }
        if (element.isRecord()) {
            List<Ask> row = asks(element, path + field + ".");
            return Optional.of(words.ask(path, field, Ask.Kind.ROWS, List.of(), false, row));
        }
        Ask.Kind kind = type.getRawType() == List.class ? Ask.Kind.ORDER : Ask.Kind.SET;
        return Optional.of(words.ask(path, field, kind, choices(element, field), false, List.of()));
    }

    private Ask single(Class<?> type, String path, String field, boolean required) {
        if (NUMBERS.contains(type)) {
            boolean must = type == double.class || type == int.class;
            return words.ask(path, field, Ask.Kind.NUMBER, List.of(), must, List.of());
        }
        if (type == Boolean.class) {
            return words.ask(path, field, Ask.Kind.FLAG, AskWords.YES_NO, required, List.of());
        }
        Collection<Choice> choices = choices(type, field);
        Ask.Kind kind = choices.isEmpty() ? Ask.Kind.TEXT : Ask.Kind.WORD;
        return words.ask(path, field, kind, choices, required, List.of());
    }

    private Collection<Choice> choices(Class<?> type, String field) {
        return type.isEnum()
                ? Arrays.stream(type.getEnumConstants())
                        .map(constant -> words.choice((Word) constant))
                        .toList()
                : words.ids(field);
    }
}
