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
import java.util.Set;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Patient;
import org.tunica.casefile.Room;
import org.tunica.casefile.Segment;
import org.tunica.casefile.Word;
import org.tunica.couch.Ask.Choice;
import org.tunica.knowledge.Knowledge;

/**
 * What a form of a case asks, read off the records of the contract, so that whatever a case can hold has its field and a
 * new measurement needs none of its own here.
 *
 * @param head of the case itself
 * @param limb of each leg
 * @param segment of each segment
 */
record CaseAsks(List<Ask> head, List<Ask> patient, List<Ask> room, List<Ask> limb, List<Ask> segment) {
    /** With the words and ranges of a release. */
    static CaseAsks of(Knowledge knowledge) {
        Reading reading = new Reading(new AskWords(knowledge));
        return new CaseAsks(
                reading.asks(CaseFile.class, ""),
                reading.asks(Patient.class, "patient."),
                reading.asks(Room.class, "room."),
                reading.asks(Limb.class, "limbs."),
                reading.asks(Segment.class, "limbs.segments."));
    }

    /** Walks the components of records. */
    private record Reading(AskWords words) {
        /** Objects with a block of their own in the form. */
        private static final Set<Class<?>> APART = Set.of(Patient.class, Room.class, Limb.class, Segment.class);

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
            } else if (type instanceof Class<?> one && one.isRecord()) {
                if (!APART.contains(one)) {
                    add(asks, one, path, field + ".");
                }
            } else {
                asks.add(single((Class<?>) type, path, field, required));
            }
        }

        /** A list or a set; legs and segments have blocks of their own. */
        private Optional<Ask> several(ParameterizedType type, String path, String field) {
            Class<?> element = (Class<?>) type.getActualTypeArguments()[0];
            if (APART.contains(element)) {
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
            if (type == OptionalDouble.class || type == double.class) {
                return words.ask(path, field, Ask.Kind.NUMBER, List.of(), type == double.class, List.of());
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
}
