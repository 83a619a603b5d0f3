package org.tunica.couch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What somebody else changed of a case while a form was open. */
final class Meanwhile {
    private Meanwhile() {}

    /** Every field that differs, with both texts. */
    static List<String> changes(CaseAsks asks, Typed seen, Typed latest) {
        Map<String, String> says = new TreeMap<>();
        Stream.of(asks.head(), asks.patient(), asks.room(), asks.limb(), asks.segment())
                .flatMap(List::stream)
                .forEach(ask -> says.put(ask.path(), ask.says()));
        List<String> changes = new ArrayList<>();
        Stream.concat(seen.fields().keySet().stream(), latest.fields().keySet().stream())
                .distinct()
                .filter(name -> !seen.all(name).equals(latest.all(name)))
                .forEach(name -> changes.add(says.getOrDefault(name.replaceAll("\\[\\d*]", ""), name) + " (" + name
                        + "): now " + words(latest, name) + ", was " + words(seen, name)));
        return changes;
    }

    private static String words(Typed typed, String name) {
        return typed.all(name).isEmpty() ? "not recorded" : String.join(" ", typed.all(name));
    }
}
