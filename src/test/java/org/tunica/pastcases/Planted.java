package org.tunica.pastcases;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Function;

/**
 * Makes up notes with identifiers of people who never were, in the many ways in which people write them. The same seed makes
 * the same notes.
 */
final class Planted {
    private static final List<String> GIVEN = List.of(
            "Rose",
            "Will",
            "May",
            "Mark",
            "Hope",
            "Dawn",
            "Anna",
            "Ilse",
            "Pieter",
            "Agnieszka",
            "Oluwaseun",
            "Nguyen",
            "Jose",
            "Chiara",
            "Bjorn",
            "Mehmet",
            "Priya",
            "Yuki",
            "Sean",
            "Fatima",
            "Gene",
            "Art",
            "Frank",
            "Grace",
            "Deep");
    private static final List<String> SURNAME = List.of(
            "Short",
            "Long",
            "Hill",
            "Brown",
            "Wood",
            "Small",
            "Day",
            "Foot",
            "Head",
            "Hand",
            "Wall",
            "Power",
            "Close",
            "Zielinski",
            "van der Meer",
            "Okonkwo",
            "Fernandez-Ruiz",
            "Lindqvist",
            "Yilmaz",
            "Takahashi",
            "Larkspur",
            "Mueller",
            "D'Angelo",
            "Stone",
            "Burns",
            "Case",
            "Low",
            "Good",
            "Block",
            "Vries",
            "Thornbury");
    private static final List<String> PLACE = List.of(
            "Ashford Mere",
            "Bath",
            "Reading",
            "Niederdorf",
            "Villalba",
            "Kowalowo",
            "Saint-Remy",
            "Oosterwold",
            "Wellow");
    private static final List<String> STREET = List.of(
            "Elm Street", "Hill Road", "Lindenweg", "rue des Tilleuls", "ulica Polna", "Via Verdi", "Calle Mayor");
    private static final List<String> MONTH =
            List.of("January", "March", "May", "August", "October", "Dezember", "mars", "septiembre", "listopada");
    private static final List<String> NUMBER =
            List.of("oh", "seven", "nine", "one", "five", "five", "four", "eight", "three", "two");
    private static final List<String> AROUND = List.of(
            "vein closed well after treatment, %s seen again",
            "no pain in the left leg. %s",
            "%s had swelling below the knee",
            "stocking worn as advised (%s) and no bruise",
            "scan showed reflux, %s, then foam was given",
            "treated by %s under ultrasound, vein wall 0.5 mm thick",
            "numbness near the ankle: %s; sensation normal later");

    private final Random random;
    private final List<Function<Planted, String>> kinds = List.of(
            p -> p.given() + " " + p.surname(),
            p -> p.surname() + ", " + p.given(),
            p -> p.pick(List.of("Mr", "Mrs", "Dr", "Prof.", "Herr", "Mme", "Sister", "nurse", "dr", "MR")) + " "
                    + p.surname(),
            p -> p.surname().toUpperCase(Locale.ROOT),
            p -> p.given().charAt(0) + ". " + p.given().charAt(1) + ". " + p.surname(),
            p -> "her daughter " + p.given(),
            p -> "his wife " + p.given() + " " + p.surname(),
            p -> "called " + p.given().toLowerCase(Locale.ROOT),
            p -> "operator " + p.letters(2),
            p -> "signed " + p.letters(1) + "." + p.letters(1) + ".",
            Planted::date,
            Planted::date,
            Planted::date,
            Planted::time,
            Planted::phone,
            Planted::phone,
            p -> "fax " + p.phone(),
            p -> p.given().toLowerCase(Locale.ROOT) + "." + p.digits(3) + "@example.org",
            p -> "https://portal.example.org/p/" + p.digits(6),
            p -> "www.example.net/~" + p.given(),
            p -> p.digits(2) + "." + p.digits(2) + "." + p.digits(3) + "." + p.digits(3),
            p -> "2001:db8::" + p.digits(4),
            p -> p.pick(List.of("MRN ", "record ", "No. ", "case #", "hosp. no. ")) + p.digits(7),
            p -> p.digits(3) + "-" + p.digits(2) + "-" + p.digits(4),
            p -> p.letters(2) + " " + p.digits(2) + " " + p.digits(2) + " " + p.digits(2) + " " + p.letters(1),
            p -> p.digits(6) + "-" + p.digits(4),
            p -> p.letters(2) + p.digits(2) + " " + p.letters(3),
            p -> p.letters(1) + "-" + p.letters(2) + " " + p.digits(4),
            p -> "serial " + p.letters(2) + p.digits(5) + "-" + p.letters(1),
            p -> "SN:" + p.digits(8),
            p -> "lot " + p.digits(4) + p.letters(1),
            p -> p.digits(2) + " " + p.pick(STREET),
            p -> p.digits(2) + " W " + p.pick(STREET),
            p -> p.letters(2) + p.digits(1) + " " + p.digits(1) + p.letters(2),
            p -> p.digits(5) + " " + p.pick(PLACE),
            p -> "lives in " + p.pick(PLACE),
            p -> p.pick(List.of("aged ", "age ", "a "))
                    + (90 + p.random.nextInt(15))
                    + p.pick(List.of(" years", "-year-old", "")),
            p -> p.pick(List.of("ninety-two years old", "aged ninety", "born in nineteen sixty")),
            p -> p.pick(List.of("room ", "ward ", "bed ", "theatre ")) + p.digits(2) + p.letters(1),
            Planted::hidden,
            Planted::hidden,
            Planted::hidden);

    Planted(long seed) {
        this.random = new Random(seed);
    }

    /** A note and the identifier in it. */
    record Note(String text, String identifier) {}

    int kinds() {
        return kinds.size();
    }

    /** A note whose identifier is of one kind. */
    Note note(int kind) {
        String identifier = kinds.get(kind % kinds.size()).apply(this);
        return new Note(String.format(Locale.ROOT, pick(AROUND), identifier), identifier);
    }

    List<Note> notes(int count) {
        List<Note> notes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            notes.add(note(i));
        }
        return notes;
    }

    private String date() {
        int day = 1 + random.nextInt(28);
        int month = 1 + random.nextInt(12);
        int year = 1930 + random.nextInt(95);
        String name = pick(MONTH);
        List<String> ways = List.of(
                "%1$d/%2$d/%3$d",
                "%1$02d.%2$02d.%3$d",
                "%3$d-%2$02d-%1$02d",
                "%3$d%2$02d%1$02d",
                "%1$02d-%2$02d-%4$02d",
                "%1$d %5$s %3$d",
                "%5$s %1$d, %3$d",
                "%1$dth of %5$s",
                "the third of %5$s",
                "%1$d. %5$s",
                "%6$s, %1$d %5$s",
                "on %6$s",
                "%5$s %3$d",
                "%1$02d/%4$02d",
                "'%4$02d",
                "%3$d/%2$02d",
                "%1$d-%5$s-%4$02d",
                "Q%7$d %3$d",
                "week %2$d of %3$d",
                "%1$02d %2$02d %3$d",
                "d.o.b. %1$d.%2$d.%4$02d");
        return String.format(
                Locale.ROOT,
                pick(ways),
                day,
                month,
                year,
                year % 100,
                name,
                pick(List.of("Monday", "Wed", "Friday", "mardi", "Sonntag")),
                1 + month / 4);
    }

    private String time() {
        int hour = 10 + random.nextInt(13);
        int minute = 10 + random.nextInt(49);
        return String.format(
                Locale.ROOT,
                pick(List.of("%d:%d", "%d.%d h", "%dh%d", "%d%d hours", "at %d:%d pm", "half past nine, %d%d")),
                hour,
                minute);
    }

    private String phone() {
        return String.format(
                Locale.ROOT,
                pick(List.of(
                        "0%s %s", "+44 7%s %s", "(0%s) %s", "0049-%s-%s", "0%s/%s", "tel. %s%s", "%s.%s", "x%s%s")),
                digits(3),
                digits(6));
    }

    /** Ways in which an identifier could be made to look like something else. */
    private String hidden() {
        String name = given();
        String digits = digits(7);
        return pick(List.of(
                name.charAt(0) + "\u200b" + name.substring(1),
                name.replace('a', '\u0430')
                                .replace('e', '\u0435')
                                .replace('o', '\u043e')
                                .replace('i', '\u0456') + "\u0301",
                name.replace('a', '4').replace('e', '3').replace('o', '0').replace('i', '1') + "7",
                String.join(" ", digits.split("")),
                String.join("-", digits.split("")),
                digits + "mm",
                digits + " mL",
                "0" + digits.substring(0, 3) + " cm",
                digits.substring(0, 2) + "." + digits.substring(2) + " mm",
                digits.substring(0, 2) + "mm " + digits.substring(2, 4) + "mm " + digits.substring(4, 6) + "mm "
                        + digits.charAt(6) + "mm",
                spelled(digits),
                "vein/" + name,
                name + "_vein",
                "(" + name + ")",
                "\uff11\uff12\uff13\uff14\uff15",
                "\u202e" + name));
    }

    private String spelled(String digits) {
        StringBuilder spelled = new StringBuilder();
        for (char digit : digits.toCharArray()) {
            spelled.append(NUMBER.get(digit - '0')).append(' ');
        }
        return spelled.toString().strip();
    }

    private String given() {
        return pick(GIVEN);
    }

    private String surname() {
        return pick(SURNAME);
    }

    private String digits(int count) {
        StringBuilder digits = new StringBuilder();
        digits.append(1 + random.nextInt(9));
        while (digits.length() < count) {
            digits.append(random.nextInt(10));
        }
        return digits.toString();
    }

    private String letters(int count) {
        StringBuilder letters = new StringBuilder();
        while (letters.length() < count) {
            letters.append((char) ('A' + random.nextInt(26)));
        }
        return letters.toString();
    }

    private String pick(List<String> from) {
        return from.get(random.nextInt(from.size()));
    }
}
