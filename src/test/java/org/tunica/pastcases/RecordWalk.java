package org.tunica.pastcases;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** Walks through records by reflection, and fills them with everything they can hold. */
final class RecordWalk {
    /** No step of rounding divides it. */
    static final double ODD = 12.3456789;

    static final String TEXT = "larkspur";

    private RecordWalk() {}

    /** Each record reachable from some, itself first. */
    static Set<Class<?>> reachable(Class<?>... from) {
        Set<Class<?>> seen = new LinkedHashSet<>();
        for (Class<?> type : from) {
            walk(type, seen);
        }
        return seen;
    }

    private static void walk(Type type, Set<Class<?>> seen) {
        if (type instanceof ParameterizedType parameterized) {
            for (Type argument : parameterized.getActualTypeArguments()) {
                walk(argument, seen);
            }
        } else if (type instanceof Class<?> plain && plain.isRecord() && seen.add(plain)) {
            for (RecordComponent component : plain.getRecordComponents()) {
                walk(component.getGenericType(), seen);
            }
        }
    }

    /** The name of a record and its component as knowledge/anonymity-fields.yaml has it. */
    static String name(RecordComponent component) {
        Class<?> record = component.getDeclaringRecord();
        String name = record.getName().substring(record.getPackageName().length() + 1);
        return name.replace('$', '.') + "." + component.getName();
    }

    /** A record in which nothing is unknown. */
    static Object filled(Type type) {
        if (type instanceof ParameterizedType parameterized) {
            return container((Class<?>) parameterized.getRawType(), parameterized.getActualTypeArguments());
        }
        Class<?> plain = (Class<?>) type;
        if (plain.isRecord()) {
            return record(plain);
        }
        if (plain.isEnum()) {
            return plain.getEnumConstants()[plain.getEnumConstants().length - 1];
        }
        Map<Class<?>, Object> values = Map.of(
                String.class,
                TEXT,
                Boolean.class,
                true,
                OptionalDouble.class,
                OptionalDouble.of(ODD),
                double.class,
                ODD,
                OptionalInt.class,
                OptionalInt.of(7),
                int.class,
                77);
        return Optional.ofNullable(values.get(plain)).orElseThrow(() -> new IllegalStateException("fill " + plain));
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Object container(Class<?> raw, Type[] of) {
        Object first = filled(of[0]);
        if (raw == Optional.class) {
            return Optional.of(first);
        }
        if (raw == List.class) {
            return List.of(first);
        }
        if (raw == Map.class) {
            return Map.of(first, filled(of[1]));
        }
        return first instanceof Enum one ? EnumSet.of(one) : Set.of(first);
    }

    private static Object record(Class<?> type) {
        RecordComponent[] components = type.getRecordComponents();
        Class<?>[] types = new Class<?>[components.length];
        Object[] values = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
            values[i] = filled(components[i].getGenericType());
        }
        try {
            return type.getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type.getName(), e);
        }
    }

    /** What a component holds. */
    static Object value(RecordComponent component, Object of) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(of);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(component.getName(), e);
        }
    }

    /** The records inside a value. */
    static List<Object> records(Object value) {
        if (value instanceof Optional<?> optional) {
            return optional.map(RecordWalk::records).orElse(List.of());
        }
        if (value instanceof Collection<?> many) {
            return many.stream().flatMap(one -> records(one).stream()).toList();
        }
        return value instanceof Record ? List.of(value) : List.of();
    }
}
