package org.tunica.meeting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.SegmentAdvice;
import org.tunica.wording.SegmentWords;

/** A decision as it is typed; every fault is named with its field, and what was typed stays. */
final class DecisionForm {
    /** Rows for those who do not agree. */
    static final int DISSENT_ROWS = 3;

    private static final String TECHNIQUE = "technique:";
    private static final int LONGEST_TEXT = 2_000;

    private final Packet packet;
    private final Map<String, String> realNames;
    private final Map<String, String> typed;
    private final List<String> faults = new ArrayList<>();

    /** @param realNames names of the segments in the case, by those of the packet */
    DecisionForm(Packet packet, Map<String, String> realNames, Map<String, String> typed) {
        this.packet = packet;
        this.realNames = realNames;
        this.typed = new HashMap<>(typed);
    }

    List<String> faults() {
        return faults;
    }

    String text(String field) {
        return typed.getOrDefault(field, "").strip();
    }

    /** The decision; empty when something is to be mended. */
    Optional<Decision> read() {
        Optional<String> date = Day.read("Date of the meeting", text("date"), faults);
        if (text("date").isEmpty()) {
            faults.add("Date of the meeting: must be given.");
        }
        List<Decision.ForSegment> segments =
                packet.advice().segments().stream().map(this::segment).toList();
        Decision.Parties parties = parties();
        return faults.isEmpty()
                ? Optional.of(Decision.of(
                        packet.meetingId(), date.orElseThrow(), packet.advice().release(), segments, parties))
                : Optional.empty();
    }

    private Decision.Parties parties() {
        List<String> agreed = Names.read("Who agreed", text("agreed"), faults);
        if (agreed.isEmpty()) {
            faults.add("Who agreed: at least one name or initials must be given.");
        }
        List<String> owner = Names.read("Who sees to it", text("owner"), faults);
        if (owner.size() != 1) {
            faults.add("Who sees to it: one name or initials must be given.");
        }
        return new Decision.Parties(
                agreed, dissent(), owner.isEmpty() ? "" : owner.get(0), Day.read("By when", text("due"), faults));
    }

    private List<Decision.Dissent> dissent() {
        List<Decision.Dissent> all = new ArrayList<>();
        for (int row = 0; row < DISSENT_ROWS; row++) {
            String who = text("dissent-who-" + row);
            String says = text("dissent-says-" + row);
            if (who.isEmpty() != says.isEmpty()) {
                faults.add("Dissent " + (row + 1) + ": who and what they said belong together; one is missing.");
            } else if (!who.isEmpty()) {
                Names.read("Dissent " + (row + 1), who, faults);
                all.add(new Decision.Dissent(who, limited("Dissent " + (row + 1), says)));
            }
        }
        return all;
    }

    private Decision.ForSegment segment(SegmentAdvice advised) {
        String ref = advised.ref();
        String picked = text("decision-" + ref);
        Optional<String> technique =
                picked.startsWith(TECHNIQUE) ? Optional.of(picked.substring(TECHNIQUE.length())) : Optional.empty();
        Optional<OptionAdvice> option = technique.flatMap(id -> offered(advised).stream()
                .filter(one -> one.technique().equals(id))
                .findFirst());
        Optional<Decision.Course> course = option.isPresent()
                ? Optional.of(Decision.Course.TECHNIQUE)
                : Arrays.stream(Decision.Course.values())
                        .filter(one ->
                                one != Decision.Course.TECHNIQUE && one.word().equals(picked))
                        .findFirst();
        if (course.isEmpty()) {
            faults.add("Segment " + ref + ": what was decided must be picked.");
        }
        Optional<OptionAdvice> first = first(advised);
        boolean isFirst = option.isPresent() && first.isPresent() && option.get() == first.get();
        return new Decision.ForSegment(
                realNames.getOrDefault(ref, ref),
                ref,
                course.orElse(Decision.Course.OTHER),
                option.map(OptionAdvice::technique),
                option.map(OptionAdvice::says)
                        .orElseGet(() ->
                                course.map(one -> one.word().replace('-', ' ')).orElse("")),
                first.map(OptionAdvice::says).orElse(""),
                why(ref, isFirst),
                reason(ref, isFirst));
    }

    private Decision.Why why(String ref, boolean isFirst) {
        if (isFirst) {
            return Decision.Why.FIRST_IN_RANK;
        }
        return Arrays.stream(Decision.Why.values())
                .filter(why -> why != Decision.Why.FIRST_IN_RANK && why.word().equals(text("why-" + ref)))
                .findFirst()
                .orElseGet(() -> {
                    faults.add("Segment " + ref + ": why it is not the first in rank must be picked.");
                    return Decision.Why.OTHER_REASON;
                });
    }

    private String reason(String ref, boolean isFirst) {
        String reason = text("reason-" + ref);
        if (reason.isEmpty() && !isFirst) {
            faults.add("Segment " + ref + ": the reason must be given in words.");
        }
        return limited("Segment " + ref, reason);
    }

    private String limited(String field, String text) {
        if (text.length() > LONGEST_TEXT) {
            faults.add(field + ": is longer than " + LONGEST_TEXT + " characters.");
        }
        return text;
    }

    private static Optional<OptionAdvice> first(SegmentAdvice advised) {
        return advised.options().stream()
                .filter(option -> option.standing().ranked())
                .findFirst();
    }

    /** What can be decided on: whatever no rule excludes and the room holds. */
    private static List<OptionAdvice> offered(SegmentAdvice advised) {
        return advised.options().stream()
                .filter(option -> option.standing().ranked())
                .toList();
    }

    /** The fields of the segments as a page shows them. */
    List<DecisionPage.SegmentField> fields() {
        return packet.advice().segments().stream()
                .map(advised -> new DecisionPage.SegmentField(
                        advised.ref(),
                        SegmentWords.title(advised),
                        first(advised).map(OptionAdvice::says).orElse("nothing could be ranked"),
                        choices(advised),
                        Choice.of(Decision.Why.class, List.of(text("why-" + advised.ref()))).stream()
                                .filter(why -> !why.value().equals(Decision.Why.FIRST_IN_RANK.word()))
                                .toList(),
                        text("reason-" + advised.ref())))
                .toList();
    }

    private List<Choice> choices(SegmentAdvice advised) {
        String picked = text("decision-" + advised.ref());
        List<Choice> choices = new ArrayList<>();
        offered(advised).forEach(option -> {
            String value = TECHNIQUE + option.technique();
            choices.add(new Choice(
                    value,
                    option.says() + " (" + option.standing().word().replace('-', ' ') + ", rank "
                            + option.rank().orElseThrow() + ")",
                    value.equals(picked)));
        });
        Choice.of(Decision.Course.class, List.of(picked)).stream()
                .filter(course -> !course.value().equals(Decision.Course.TECHNIQUE.word()))
                .forEach(choices::add);
        return choices;
    }

    /** The rows for those who do not agree, as they were typed. */
    List<DecisionPage.DissentRow> dissentRows() {
        List<DecisionPage.DissentRow> rows = new ArrayList<>();
        for (int row = 0; row < DISSENT_ROWS; row++) {
            rows.add(new DecisionPage.DissentRow(row, text("dissent-who-" + row), text("dissent-says-" + row)));
        }
        return rows;
    }
}
