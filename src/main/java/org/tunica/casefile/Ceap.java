package org.tunica.casefile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One leg in the CEAP classification of 2020, read and printed in its notation, for example {@code
 * C2,4as,Ep,As(GSVa,SSV),p(CPV),Pr}: clinical classes with s or a for symptoms, cause, anatomy, flow.
 *
 * <p>Classes and causes S-0081 and S-0082; the suffix, the letters of the flow and the abbreviations of the veins are from
 * memory, unverified. A part that is not written is unknown.
 *
 * @param clinical the clinical classes present, at least one
 * @param symptoms whether the leg gives trouble
 * @param causes the causes
 * @param anatomy the sites, each with the veins named of it, which may be none
 * @param flow what is wrong with the flow
 */
public record Ceap(
        Set<Limb.CeapClass> clinical,
        Optional<Symptoms> symptoms,
        Set<Cause> causes,
        Map<Site, Set<NamedVein>> anatomy,
        Set<Flow> flow) {

    public Ceap {
        if (clinical.isEmpty()) {
            throw new IllegalArgumentException("clinical must hold at least one class");
        }
        clinical = Collections.unmodifiableSet(EnumSet.copyOf(clinical));
        causes = ordered(Cause.class, causes);
        flow = ordered(Flow.class, flow);
        Map<Site, Set<NamedVein>> bySite = new EnumMap<>(Site.class);
        anatomy.forEach((site, veins) -> bySite.put(site, ordered(NamedVein.class, veins)));
        anatomy = Collections.unmodifiableMap(bySite);
    }

    /**
     * The classification written in a text.
     *
     * @param place where the text stands, for the faults
     * @return nothing when it is faulty; every fault is noted
     */
    public static Optional<Ceap> read(String place, String text, Faults faults) {
        return new CeapReader(place, faults).read(text);
    }

    /** The highest clinical class, by which a leg is usually named. */
    public Limb.CeapClass highest() {
        return Collections.max(clinical);
    }

    /** The notation; {@link #read} reads it back. */
    @Override
    public String toString() {
        List<String> parts = new ArrayList<>();
        String classes =
                clinical.stream().map(one -> one.word().substring(1)).collect(Collectors.joining(",", "C", ""));
        parts.add(classes + symptoms.map(Code::code).orElse(""));
        section("E", causes.stream().map(Code::code).toList()).ifPresent(parts::add);
        section("A", anatomy.entrySet().stream().map(Ceap::site).toList()).ifPresent(parts::add);
        section("P", flow.stream().map(Code::code).toList()).ifPresent(parts::add);
        return String.join(",", parts);
    }

    private static Optional<String> section(String letter, List<String> codes) {
        return codes.isEmpty() ? Optional.empty() : Optional.of(letter + String.join(",", codes));
    }

    private static String site(Map.Entry<Site, Set<NamedVein>> entry) {
        String site = entry.getKey().code();
        return entry.getValue().isEmpty()
                ? site
                : site + entry.getValue().stream().map(Code::code).collect(Collectors.joining(",", "(", ")"));
    }

    private static <E extends Enum<E>> Set<E> ordered(Class<E> type, Set<E> values) {
        Set<E> copy = EnumSet.noneOf(type);
        copy.addAll(values);
        return Collections.unmodifiableSet(copy);
    }

    /** What is written with a letter or an abbreviation. */
    interface Code {
        /** As it stands in the notation. */
        String code();

        /** The constant of a code, if there is one. */
        static <E extends Enum<E> & Code> Optional<E> of(Class<E> type, String code) {
            return Arrays.stream(type.getEnumConstants())
                    .filter(one -> one.code().equals(code))
                    .findFirst();
        }

        /** Every code of a kind. */
        static <E extends Enum<E> & Code> List<String> all(Class<E> type) {
            return Arrays.stream(type.getEnumConstants()).map(Code::code).toList();
        }
    }

    /** Whether the leg gives trouble that comes from its veins. */
    public enum Symptoms implements Code {
        SYMPTOMATIC("s"),
        ASYMPTOMATIC("a");

        private final String code;

        Symptoms(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    /** Where it comes from. */
    public enum Cause implements Code {
        CONGENITAL("c"),
        PRIMARY("p"),
        SECONDARY("s"),
        SECONDARY_INTRAVENOUS("si"),
        SECONDARY_EXTRAVENOUS("se"),
        NONE_FOUND("n");

        private final String code;

        Cause(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    /** Which set of veins. */
    public enum Site implements Code {
        SUPERFICIAL("s"),
        PERFORATING("p"),
        DEEP("d"),
        NONE_FOUND("n");

        private final String code;

        Site(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    /** What is wrong with the flow. */
    public enum Flow implements Code {
        REFLUX("r"),
        OBSTRUCTION("o"),
        NONE_FOUND("n");

        private final String code;

        Flow(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }
}
