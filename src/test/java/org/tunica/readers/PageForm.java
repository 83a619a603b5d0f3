package org.tunica.readers;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A form of a page as a person without a mouse and without a script has it: every field with what stands in it, each found by
 * the words beside it.
 */
final class PageForm {
    private static final Pattern FORM = Pattern.compile("(?s)<form\\b([^>]*)>(.*?)</form>");
    private static final Pattern INPUT = Pattern.compile("<input\\b([^>]*)>");
    private static final Pattern SELECT = Pattern.compile("(?s)<select\\b([^>]*)>(.*?)</select>");
    private static final Pattern TEXT = Pattern.compile("(?s)<textarea\\b([^>]*)>(.*?)</textarea>");
    private static final Pattern OPTION = Pattern.compile("(?s)<option\\b([^>]*)>(.*?)</option>");
    private static final Pattern LABEL = Pattern.compile("(?s)<label\\b([^>]*)>(.*?)</label>");
    private static final Pattern BUTTON = Pattern.compile("(?s)<button\\b([^>]*)>(.*?)</button>");
    private static final Pattern GROUP = Pattern.compile("(?s)<fieldset\\b[^>]*>(.*?)</fieldset>");
    private static final Pattern LEGEND = Pattern.compile("(?s)<legend\\b[^>]*>(.*?)</legend>");

    private final String html;
    private final String action;
    private final boolean gets;
    private final Map<String, List<String>> fields = new LinkedHashMap<>();

    private PageForm(String tag, String html) {
        this.html = html;
        this.action = attribute(tag, "action");
        this.gets = attribute(tag, "method").equals("get");
        for (Matcher input = INPUT.matcher(html); input.find(); ) {
            boolean pick = attribute(input.group(1), "type").matches("radio|checkbox");
            if (!pick || has(input.group(1), "checked")) {
                put(input.group(1), attribute(input.group(1), "value"));
            }
        }
        for (Matcher select = SELECT.matcher(html); select.find(); ) {
            put(select.group(1), selected(select.group(2)));
        }
        for (Matcher text = TEXT.matcher(html); text.find(); ) {
            put(text.group(1), plain(text.group(2)));
        }
    }

    /** The form with a button of these words. */
    static PageForm with(String page, String button) {
        for (Matcher form = FORM.matcher(page); form.find(); ) {
            for (Matcher found = BUTTON.matcher(form.group(2)); found.find(); ) {
                if (words(found.group(2)).equals(button)) {
                    PageForm made = new PageForm(form.group(1), form.group(2));
                    made.put(found.group(1), attribute(found.group(1), "value"));
                    return made;
                }
            }
        }
        throw new AssertionError("no form with a button \"" + button + "\" on " + words(page));
    }

    String action() {
        return action;
    }

    /** Whether it only asks for another page. */
    boolean gets() {
        return gets;
    }

    /** What it asks for then. */
    String address() {
        return action + "?"
                + fields.entrySet().stream()
                        .flatMap(field -> field.getValue().stream()
                                .map(value -> field.getKey() + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8)))
                        .collect(Collectors.joining("&"));
    }

    /** What stands in the field these words name. */
    String holds(String label) {
        String id = labelled(label).orElseThrow(() -> new AssertionError("no field called \"" + label + "\""));
        for (Matcher input = INPUT.matcher(html); input.find(); ) {
            if (attribute(input.group(1), "id").equals(id)) {
                return attribute(input.group(1), "value");
            }
        }
        throw new AssertionError("\"" + label + "\" names no line");
    }

    /** What stands in the fields whose names begin so. */
    Map<String, List<String>> under(String prefix) {
        return fields.entrySet().stream()
                .filter(field -> field.getKey().startsWith(prefix))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    /** What is sent. */
    Map<String, List<String>> fields() {
        return fields;
    }

    /** Types into the field, or picks in the list or group, that these words name. */
    void set(String label, String text) {
        Optional<String> id = labelled(label);
        if (id.isPresent()) {
            typeOrPick(label, id.get(), text);
        } else {
            pick(label, text);
        }
    }

    /** Ticks what these words name. */
    void tick(String label) {
        for (Matcher found = LABEL.matcher(html); found.find(); ) {
            Matcher input = INPUT.matcher(found.group(2));
            if (words(found.group(2)).startsWith(label) && input.find()) {
                put(input.group(1), attribute(input.group(1), "value"));
                return;
            }
        }
        throw new AssertionError("nothing to tick called \"" + label + "\"");
    }

    private Optional<String> labelled(String label) {
        for (Matcher found = LABEL.matcher(html); found.find(); ) {
            if (words(found.group(2)).replace(" must be given", "").equals(label) && has(found.group(1), "for")) {
                return Optional.of(attribute(found.group(1), "for"));
            }
        }
        return Optional.empty();
    }

    private void typeOrPick(String label, String id, String text) {
        for (Matcher select = SELECT.matcher(html); select.find(); ) {
            if (attribute(select.group(1), "id").equals(id)) {
                String value = option(select.group(2), text)
                        .orElseThrow(() -> new AssertionError(
                                "no \"" + text + "\" under " + label + ": " + words(select.group(2))));
                fields.put(attribute(select.group(1), "name"), List.of(value));
                return;
            }
        }
        for (Pattern kind : List.of(INPUT, TEXT)) {
            for (Matcher field = kind.matcher(html); field.find(); ) {
                if (attribute(field.group(1), "id").equals(id)) {
                    fields.put(attribute(field.group(1), "name"), List.of(text));
                    return;
                }
            }
        }
        throw new AssertionError("the words \"" + label + "\" name no field");
    }

    private void pick(String legend, String text) {
        for (Matcher group = GROUP.matcher(html); group.find(); ) {
            Matcher named = LEGEND.matcher(group.group(1));
            if (!named.find()
                    || !words(named.group(1)).replace(" must be given", "").equals(legend)) {
                continue;
            }
            for (Matcher label = LABEL.matcher(group.group(1)); label.find(); ) {
                Matcher input = INPUT.matcher(label.group(2));
                if (words(label.group(2)).startsWith(text) && input.find()) {
                    fields.put(attribute(input.group(1), "name"), List.of(attribute(input.group(1), "value")));
                    return;
                }
            }
        }
        throw new AssertionError("nothing called \"" + legend + "\" with \"" + text + "\"");
    }

    private static String selected(String options) {
        String first = "";
        int at = 0;
        for (Matcher option = OPTION.matcher(options); option.find(); at++) {
            if (at == 0 || has(option.group(1), "selected")) {
                first = attribute(option.group(1), "value");
            }
        }
        return first;
    }

    private static Optional<String> option(String options, String text) {
        for (Matcher option = OPTION.matcher(options); option.find(); ) {
            if (words(option.group(2)).equals(text)) {
                return Optional.of(attribute(option.group(1), "value"));
            }
        }
        return Optional.empty();
    }

    private void put(String tag, String value) {
        String name = attribute(tag, "name");
        if (!name.isEmpty()) {
            fields.computeIfAbsent(name, any -> new ArrayList<>()).add(value);
        }
    }

    private static boolean has(String tag, String attribute) {
        return Pattern.compile("\\s" + attribute + "(?=[\\s=]|$)").matcher(tag).find();
    }

    private static String attribute(String tag, String attribute) {
        Matcher found = Pattern.compile("\\s" + attribute + "=\"([^\"]*)\"").matcher(tag);
        return found.find() ? plain(found.group(1)) : "";
    }

    /** The words of a piece of a page, as they are read. */
    static String words(String html) {
        return plain(html.replaceAll("(?s)<(script|style)\\b.*?</\\1>", " ").replaceAll("<[a-zA-Z/!][^>]*>", " "))
                .replaceAll("\\s+", " ")
                .replaceAll(" ([.,;:])", "$1")
                .strip();
    }

    private static String plain(String html) {
        return html.replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&#34;", "\"")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&");
    }
}
