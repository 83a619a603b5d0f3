package org.tunica.couch;

import java.util.List;

/**
 * A field of the form as a page shows it.
 *
 * @param name under which it is sent
 * @param id by which the page refers to it
 * @param says what is asked
 * @param hint what may stand in it; empty where the choices say it
 * @param unit behind a number; empty where there is none
 * @param value of a field to type in
 * @param choices of a field to pick from; "not recorded" is the first wherever it is an answer
 * @param faults what is wrong with it
 * @param rows fields of a list, row by row
 */
public record FormField(
        String name,
        String id,
        Shape shape,
        String says,
        String hint,
        String unit,
        boolean required,
        String value,
        List<Choice> choices,
        List<String> faults,
        List<List<FormField>> rows) {
    /** How it looks. */
    public enum Shape {
        LINE,
        SELECT,
        RADIOS,
        TICKS,
        ROWS
    }

    /** Something to pick. */
    public record Choice(String value, String says, boolean picked) {}

    public FormField {
        choices = List.copyOf(choices);
        faults = List.copyOf(faults);
        rows = List.copyOf(rows);
    }

    /** A name as an id: no signs that a link would have to escape. */
    static String id(String name) {
        return "field-" + name.replaceAll("[^A-Za-z0-9]+", "-");
    }

    /** Whether a list or a set is answered at all. */
    public boolean recorded() {
        return value.equals(Typed.RECORDED);
    }

    /** How many are ticked, for a list that is folded away. */
    public long picked() {
        return choices.stream().filter(Choice::picked).count();
    }

    /** What describes it, for those who do not see the page. */
    public String describedBy() {
        return (hint.isEmpty() ? "" : id + "-hint") + (faults.isEmpty() ? "" : " " + id + "-fault");
    }
}
