package org.tunica.office;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.proposal.CheckedChange;
import org.tunica.proposal.Opening;
import org.tunica.releases.ChangeState;
import org.tunica.releases.HandedIn;
import org.tunica.review.Difference;
import org.tunica.workroom.Draft;
import org.tunica.workroom.ReplayRoom;

/** Puts together what is known of one change, in words. */
record ChangeView(Desks desks) {
    private static final Pattern FILE_AND_LINE = Pattern.compile("((?:rules|knowledge|features)/\\S+?)(?::(\\d+))?");

    static List<ReleasePage.Fact> facts(Opening opening, String title) {
        return List.of(
                new ReleasePage.Fact("About", title),
                new ReleasePage.Fact("Author", opening.author()),
                new ReleasePage.Fact(
                        "Begun",
                        opening.on() + " with "
                                + (opening.release().equals("draft")
                                        ? "the program's own rules, a draft"
                                        : "release " + opening.release())));
    }

    /** A working copy, with what does not load in it. */
    ChangePage.DraftView draft(Draft draft, List<Fault> faults, String reason) {
        return new ChangePage.DraftView(
                "changes/" + draft.number(),
                reason,
                faults.stream().map(ChangeView::fault).toList(),
                changed(draft),
                new EditView(desks).ids(draft),
                List.copyOf(desks.reviews()
                        .of(draft.copy().before())
                        .knowledge()
                        .quantities()
                        .keySet()),
                List.copyOf(draft.texts().keySet()));
    }

    static ChangePage.FileFault fault(Fault fault) {
        Matcher place = FILE_AND_LINE.matcher(fault.place().split("[ ,]")[0]);
        return place.matches()
                ? new ChangePage.FileFault(
                        fault.toString(), place.group(1), place.group(2) == null ? 1 : Integer.parseInt(place.group(2)))
                : new ChangePage.FileFault(fault.toString(), "", 1);
    }

    private static List<String> changed(Draft draft) {
        SortedMap<String, String> before = new TreeMap<>(draft.copy().before().texts());
        before.putAll(draft.copy().scenariosBefore());
        SortedMap<String, String> after = draft.texts();
        List<String> changed = new ArrayList<>();
        for (Map.Entry<String, String> file : after.entrySet()) {
            if (!file.getValue().equals(before.get(file.getKey()))) {
                changed.add(file.getKey());
            }
        }
        return changed;
    }

    static ChangePage.Told told(String heading, CheckedChange change) {
        return new ChangePage.Told(
                heading,
                verdict(change),
                change.checks().stream()
                        .map(check -> new ChangePage.CheckLine(
                                check.result().name().toLowerCase(Locale.ROOT),
                                check.question().says(),
                                check.findings()))
                        .toList(),
                Difference.text(change.differences()).lines().toList(),
                change.lines().lines().map(ChangeView::line).toList(),
                change.digest());
    }

    private static String verdict(CheckedChange change) {
        return switch (change.result()) {
            case BAR -> "A check bars it: it cannot be handed in.";
            case WARN -> "Nothing bars it: it can be handed in. What warns is for those who sign to judge.";
            case PASS -> "Nothing bars it: it can be handed in.";
        };
    }

    private static ChangePage.Line line(String line) {
        if (line.startsWith("+++") || line.startsWith("---") || line.startsWith("@@")) {
            return new ChangePage.Line("place", line);
        }
        return new ChangePage.Line(line.startsWith("+") ? "is" : line.startsWith("-") ? "was" : "same", line);
    }

    /** What a replay of a change holds against each other: what is in force now, and the rules as they are. */
    ReplayRoom.Sides sides(Bundle proposed) {
        return new ReplayRoom.Sides(desks.changes().start().bundle(), proposed);
    }

    ChangePage.ReplayState replay(Optional<Bundle> proposed, boolean possible) {
        if (proposed.isEmpty()) {
            return new ChangePage.ReplayState("", 0, 0, false, List.of(), false);
        }
        ReplayRoom.Sides sides = sides(proposed.get());
        Optional<ReplayRoom.Running> here = desks.replays().running(sides);
        Optional<ReplayRoom.Running> any = desks.replays().running();
        String says = any.map(now -> now.of() + " is being replayed since " + now.since() + ", begun by " + now.by()
                        + ": " + now.casesDone() + " of " + now.casesAll() + " cases.")
                .orElse("");
        return new ChangePage.ReplayState(
                says,
                here.map(ReplayRoom.Running::casesDone).orElse(0L),
                here.map(ReplayRoom.Running::casesAll).orElse(0L),
                desks.replays().finished(sides).isPresent(),
                desks.replays().failure(sides),
                possible && any.isEmpty());
    }

    /** The rules of a change as they were handed in last. */
    Bundle handedIn(String number) {
        return desks.changes().rules(number);
    }

    /** What a release of a change would be called, when it is in review. */
    Optional<ChangePage.Build> build(Optional<HandedIn> change, String title) {
        return change.filter(one -> one.state() == ChangeState.IN_REVIEW)
                .map(one -> new ChangePage.Build(
                        "", title, "", "", desks.today().plusYears(1).toString()));
    }

    Optional<HandedIn> known(String number) {
        try {
            return Optional.of(desks.changes().one(number));
        } catch (FaultyInput e) {
            return Optional.empty();
        }
    }
}
