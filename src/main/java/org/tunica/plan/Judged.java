package org.tunica.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.tunica.rules.Conclusion;
import org.tunica.rules.Considered;
import org.tunica.rules.Verdict;

/** An option with the verdicts on it, by kind. Here doubt is read against the option. */
final class Judged {
    private final Considered option;
    private final Map<Conclusion.Kind, List<Verdict>> byKind = new EnumMap<>(Conclusion.Kind.class);

    Judged(Considered option, List<Verdict> verdicts) {
        this.option = option;
        verdicts.forEach(verdict -> byKind.computeIfAbsent(verdict.kind(), kind -> new ArrayList<>())
                .add(verdict));
    }

    Considered option() {
        return option;
    }

    List<Verdict> findings() {
        return of(Conclusion.Kind.FIND).stream().filter(Verdict::speaks).toList();
    }

    List<Verdict> exclusions() {
        return of(Conclusion.Kind.EXCLUDE).stream().filter(Verdict::speaks).toList();
    }

    List<Verdict> absences() {
        return of(Conclusion.Kind.NOT_IN_ROOM).stream().filter(Verdict::speaks).toList();
    }

    /** What must be measured first: the needs themselves, and every exclusion or absence that cannot be told. */
    List<Verdict> needs() {
        List<Verdict> needs = new ArrayList<>(of(Conclusion.Kind.MEASURE_FIRST));
        for (Conclusion.Kind kind : List.of(Conclusion.Kind.EXCLUDE, Conclusion.Kind.NOT_IN_ROOM)) {
            of(kind).stream().filter(verdict -> !verdict.speaks()).forEach(needs::add);
        }
        return needs;
    }

    /** Cautions, also those that cannot be told. */
    List<Verdict> cautions() {
        return of(Conclusion.Kind.CAUTION);
    }

    /** Reasons for, only those that hold for certain. */
    List<Verdict> reasonsFor() {
        return of(Conclusion.Kind.PREFER).stream().filter(Verdict::speaks).toList();
    }

    /** Reasons against, also those that cannot be told. */
    List<Verdict> reasonsAgainst() {
        return of(Conclusion.Kind.DISFAVOUR);
    }

    List<Verdict> settings() {
        return of(Conclusion.Kind.SET).stream().filter(Verdict::speaks).toList();
    }

    /** What the rules say, without the words, in the order of their ids. */
    List<RuleVoice> voices() {
        List<RuleVoice> voices = new ArrayList<>();
        add(voices, exclusions(), Reason.Stands.EXCLUDES);
        add(voices, absences(), Reason.Stands.NOT_IN_ROOM);
        add(voices, reasonsFor(), Reason.Stands.FOR);
        add(voices, reasonsAgainst(), Reason.Stands.AGAINST);
        add(voices, settings(), Reason.Stands.SETS);
        add(voices, findings(), Reason.Stands.FINDS);
        add(voices, cautions(), Reason.Stands.CAUTIONS);
        add(voices, needs(), Reason.Stands.ASKS);
        voices.sort(OptionJudgement.BY_RULE);
        return voices;
    }

    private static void add(List<RuleVoice> voices, List<Verdict> verdicts, Reason.Stands stands) {
        verdicts.forEach(verdict -> voices.add(RuleVoice.of(verdict, stands)));
    }

    OptionStanding standing() {
        if (exclusions().isEmpty() && !absences().isEmpty()) {
            return OptionStanding.NOT_IN_ROOM;
        }
        return standingInAnotherRoom();
    }

    /** How the option would stand in a room that holds its device and drug. */
    OptionStanding standingInAnotherRoom() {
        if (!exclusions().isEmpty()) {
            return OptionStanding.EXCLUDED;
        }
        if (!needs().isEmpty()) {
            return OptionStanding.MEASURE_FIRST;
        }
        if (cautions().stream().anyMatch(Judged::toBeWeighed)) {
            return OptionStanding.CAREFUL;
        }
        boolean preferred = reasonsFor().stream().anyMatch(Judged::firstChoice)
                && reasonsAgainst().stream().noneMatch(Judged::strong);
        return preferred ? OptionStanding.PREFERRED : OptionStanding.SUITABLE;
    }

    /** How much a caution, or a reason for or against, counts. */
    static Conclusion.Strength strength(Verdict verdict) {
        return ((Conclusion.Weighed) verdict.rule().conclusion()).strength();
    }

    /** A slight caution is counsel or order of work: it costs points and is shown, but does not change the standing. */
    private static boolean toBeWeighed(Verdict caution) {
        return strength(caution) != Conclusion.Strength.SLIGHT;
    }

    private static boolean strong(Verdict verdict) {
        return strength(verdict) == Conclusion.Strength.STRONG;
    }

    private static boolean firstChoice(Verdict verdict) {
        return strength(verdict) == Conclusion.Strength.FIRST_CHOICE;
    }

    private List<Verdict> of(Conclusion.Kind kind) {
        return byKind.getOrDefault(kind, List.of());
    }
}
