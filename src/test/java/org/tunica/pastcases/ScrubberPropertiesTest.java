package org.tunica.pastcases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import org.tunica.Tunica;
import org.tunica.knowledge.ClinicalWords;

/** Whatever goes in, hostile or not: only what is listed comes out, and it comes out the same again. */
class ScrubberPropertiesTest {
    private static final ClinicalWords WORDS = Tunica.shipped().knowledge().words();
    private static final NoteScrubber SCRUBBER =
            new NoteScrubber(Tunica.shipped().knowledge());
    private static final Set<String> SINGLE = single();
    private static final Pattern MEASURE =
            Pattern.compile("[(<>~]?([0-9.,-]+|[0-9]+)\u2013?[0-9.,]*([^0-9 .,;:!?)]\\S*)?");
    private static final Pattern LONG_NUMBER = Pattern.compile("[0-9]{5}");

    @Property(tries = 400, seed = "20260102")
    void scrubbedTwice_isScrubbedOnce(@ForAll("hostile") String text) {
        String once = scrub(text);
        assertEquals(once, scrub(once), () -> "from " + text);
    }

    @Property(tries = 400, seed = "20260103")
    void nothingButListedWordsAndMeasures_comesOut(@ForAll("hostile") String text) {
        String out = scrub(text);
        for (String token : out.split(" ")) {
            String plain = token.replaceAll("^[(<>~]|[.,;:!?)]+$", "");
            boolean placeholder = plain.startsWith("[...]");
            assertTrue(
                    token.isEmpty()
                            || placeholder
                            || listed(plain)
                            || MEASURE.matcher(plain).matches(),
                    () -> "\"" + token + "\" of " + out + " from " + text);
        }
        assertTrue(!LONG_NUMBER.matcher(out).find(), () -> out + " from " + text);
    }

    /** Figures stand only before a unit. */
    @Property(tries = 400, seed = "20260104")
    void everyNumber_hasItsUnit(@ForAll("hostile") String text) {
        String out = scrub(text);
        Matcher number = Pattern.compile("(?<![A-Za-z0-9/])[0-9]+(?:[.,][0-9]+)?(?![0-9.,/-]*[0-9])[-\u2013]? ?(\\S*)")
                .matcher(out);
        while (number.find()) {
            String unit = number.group(1).replaceAll("[.,;:!?)]+$", "").replace("\u00b0C", "Cel");
            assertTrue(WORDS.units().containsKey(unit), () -> "\"" + number.group() + "\" in " + out + " from " + text);
        }
    }

    private static boolean listed(String token) {
        if (SINGLE.contains(token)
                || SINGLE.contains(token.substring(0, 1).toLowerCase(Locale.ROOT) + token.substring(1))) {
            return true;
        }
        String base = token.replaceAll("'s$", "");
        return SINGLE.contains(base) || List.of(base.split("[-/]")).stream().allMatch(SINGLE::contains);
    }

    private static String scrub(String text) {
        return String.join(" ", SCRUBBER.scrub(List.of(text)));
    }

    private static Set<String> single() {
        Set<String> single = new HashSet<>(WORDS.openers());
        single.addAll(WORDS.lower());
        WORDS.phrases().forEach(single::addAll);
        single.addAll(WORDS.abbreviations());
        single.addAll(WORDS.units().keySet());
        single.add("\u00b0C");
        return single;
    }

    /** Words that may stay, identifiers, tricks and noise, put together at random. */
    @Provide
    Arbitrary<String> hostile() {
        List<String> planted =
                new Planted(7).notes(300).stream().map(Planted.Note::identifier).toList();
        List<String> words = WORDS.openers();
        Arbitrary<String> pieces = Arbitraries.frequencyOf(
                Tuple.of(6, Arbitraries.of(words)),
                Tuple.of(3, Arbitraries.of(planted)),
                Tuple.of(
                        3,
                        Arbitraries.doubles()
                                .between(0, 2000)
                                .ofScale(2)
                                .map(Object::toString)
                                .flatMap(number -> Arbitraries.of(WORDS.units().keySet().stream()
                                                .sorted()
                                                .toList())
                                        .map(unit -> number + " " + unit))),
                Tuple.of(
                        2,
                        Arbitraries.integers()
                                .between(0, 200)
                                .flatMap(number -> Arbitraries.of(WORDS.units().keySet().stream()
                                                .sorted()
                                                .toList())
                                        .map(unit -> number + unit))),
                Tuple.of(2, Arbitraries.strings().ofMinLength(1).ofMaxLength(8)),
                Tuple.of(1, Arbitraries.strings().ascii().ofMinLength(1).ofMaxLength(12)),
                Tuple.of(
                        1,
                        Arbitraries.of(
                                "Dr",
                                "mr",
                                "[...]",
                                "[...].",
                                ".",
                                "Small saphenous",
                                "the wall",
                                "class C4a",
                                "W",
                                "J")),
                Tuple.of(
                        1,
                        Arbitraries.of(words)
                                .map(word -> word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1))));
        return pieces.list()
                .ofMinSize(1)
                .ofMaxSize(14)
                .map(list -> list.stream().collect(Collectors.joining(" ")));
    }
}
