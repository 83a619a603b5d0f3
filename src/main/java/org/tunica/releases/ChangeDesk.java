package org.tunica.releases;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.governance.Manifest;
import org.tunica.governance.ReleaseFiles;
import org.tunica.governance.StepKind;
import org.tunica.knowledge.Bundle;
import org.tunica.proposal.Check;
import org.tunica.proposal.CheckedChange;
import org.tunica.proposal.Opening;
import org.tunica.proposal.WorkingCopy;
import org.tunica.store.Act;
import org.tunica.store.Actor;
import org.tunica.store.KeptChangeStep;
import org.tunica.store.NewChangeStep;
import org.tunica.store.Role;
import org.tunica.store.Store;
import org.tunica.store.User;
import org.tunica.store.UserState;

/** Where changes of rules are handed in and taken back. Every act is one transaction. */
public final class ChangeDesk {
    private final Store store;
    private final ReleaseRecords records;
    private final Engines engines;

    /** The changes kept in a store, against what its releases say is in force. */
    public ChangeDesk(Store store, Engines engines) {
        this.store = store;
        this.records = new ReleaseRecords(store);
        this.engines = engines;
    }

    /** What a change begins with: the release in force, or the program's own rules when none is. */
    public record Start(Bundle bundle, String release) {}

    /** @throws FaultyInput when the release in force does not verify or has run out */
    public Start start() {
        return engines.inForce()
                .version()
                .map(version -> new Start(records.release(version).files().bundle(), version))
                .orElseGet(() -> new Start(Bundle.shipped(), "draft"));
    }

    /** The scenarios of the release in force, by path; none when it has none. */
    public SortedMap<String, String> scenarios() {
        SortedMap<String, String> scenarios = new TreeMap<>();
        engines.inForce()
                .version()
                .ifPresent(version -> records.release(version).files().texts().forEach((path, text) -> {
                    if (path.startsWith("features/")) {
                        scenarios.put(path, text);
                    }
                }));
        return scenarios;
    }

    /**
     * Hands a change in with its checks.
     *
     * @throws FaultyInput with every reason against it: a check bars it, its author is nobody who writes rules, another
     *     release is in force by now, it is in a release already, or it was edited since it was checked
     */
    public HandedIn submit(Actor by, WorkingCopy copy, CheckedChange checked) {
        Opening opening = copy.opening();
        return store.together(() -> {
            Faults faults = new Faults();
            barred(checked, faults);
            author(opening, faults);
            current(opening, faults);
            taken(opening, faults);
            faults.throwIfAny("change " + opening.number());
            String rules = copy.after().digest();
            if (!checked.covers().orElseThrow().rules().equals(rules)) {
                throw fault(opening.number(), "was edited since it was checked");
            }
            store.changes()
                    .step(
                            by,
                            new NewChangeStep(
                                    opening.number(),
                                    Act.CHANGE_SUBMITTED,
                                    opening.author(),
                                    checked.digest(),
                                    rules,
                                    checked.toJson(),
                                    files(copy).packed(),
                                    ""));
            return one(opening.number());
        });
    }

    private static ReleaseFiles files(WorkingCopy copy) {
        Map<String, String> texts = new TreeMap<>(copy.after().texts());
        texts.putAll(copy.scenarios());
        return ReleaseFiles.of(texts);
    }

    private static void barred(CheckedChange checked, Faults faults) {
        checked.checks().stream()
                .filter(check -> check.result() == Check.Result.BAR)
                .forEach(check -> check.findings()
                        .forEach(finding -> faults.add(check.question().word(), finding)));
    }

    private void author(Opening opening, Faults faults) {
        Optional<User> author = store.users().find(opening.author());
        boolean writes = author.filter(user -> user.state() == UserState.ACTIVE)
                .filter(user -> user.roles().contains(Role.RULE_AUTHOR))
                .isPresent();
        if (!writes) {
            faults.add("author " + opening.author(), "is nobody here who writes rules");
        }
    }

    private void current(Opening opening, Faults faults) {
        Start now = start();
        if (!now.bundle().digest().equals(opening.digest())) {
            faults.add(
                    "change " + opening.number(),
                    "began with " + named(opening.release()) + "; " + named(now.release())
                            + " is in force now, so begin it anew with that");
        }
    }

    private static String named(String release) {
        return release.equals("draft") ? "the program's own rules" : "release " + release;
    }

    private void taken(Opening opening, Faults faults) {
        releaseOf(opening.number())
                .ifPresent(version -> faults.add(
                        "change " + opening.number(), "is in release " + version + " already; begin another"));
        handedIn(opening.number())
                .filter(change -> !change.author().equals(opening.author()))
                .ifPresent(change -> faults.add(
                        "change " + opening.number(), "was handed in by " + change.author() + "; take another number"));
    }

    /**
     * Takes a change back.
     *
     * @throws FaultyInput when it is not in review
     */
    public HandedIn withdraw(Actor by, String number, String reason) {
        return store.together(() -> {
            HandedIn change = one(number);
            if (change.state() != ChangeState.IN_REVIEW) {
                throw fault(number, "is " + change.state().words() + "; only one in review is taken back");
            }
            store.changes()
                    .step(by, new NewChangeStep(number, Act.CHANGE_WITHDRAWN, change.author(), "", "", "", "", reason));
            return one(number);
        });
    }

    /** Every change that was handed in, the one that moved last first. */
    public List<HandedIn> all() {
        List<HandedIn> all = new ArrayList<>();
        store.changes().last().forEach(last -> all.add(one(last.what().number())));
        return all;
    }

    /**
     * One change.
     *
     * @throws FaultyInput when none of that number was handed in
     */
    public HandedIn one(String number) {
        return handedIn(number).orElseThrow(() -> fault(number, "was never handed in"));
    }

    private Optional<HandedIn> handedIn(String number) {
        List<KeptChangeStep> steps = store.changes().steps(number);
        List<KeptChangeStep> submitted = steps.stream()
                .filter(step -> step.what().act() == Act.CHANGE_SUBMITTED)
                .toList();
        if (submitted.isEmpty()) {
            return Optional.empty();
        }
        KeptChangeStep last = steps.get(steps.size() - 1);
        NewChangeStep shown = submitted.get(submitted.size() - 1).what();
        Optional<String> release = releaseOf(number);
        ChangeState otherwise =
                last.what().act() == Act.CHANGE_WITHDRAWN ? ChangeState.WITHDRAWN : ChangeState.IN_REVIEW;
        return Optional.of(new HandedIn(
                number,
                release.isPresent() ? ChangeState.IN_A_RELEASE : otherwise,
                shown.author(),
                last.stamp().at(),
                submitted.size(),
                shown.digest(),
                shown.body(),
                release));
    }

    /** The first release that brings a change and was neither refused nor withdrawn. */
    private Optional<String> releaseOf(String number) {
        return records.timeline().stories().stream()
                .filter(story -> story.last(StepKind.REFUSED).isEmpty())
                .filter(story -> story.last(StepKind.WITHDRAWN).isEmpty())
                .map(story -> records.release(story.version()).files().manifest())
                .filter(manifest -> manifest.changes().contains(number))
                .map(Manifest::version)
                .findFirst();
    }

    /**
     * The document of a change with exactly these rules, for those who sign a release that brings it.
     *
     * @param rules digest over rules and knowledge of the release
     */
    public Optional<String> document(String number, String rules) {
        List<KeptChangeStep> steps = store.changes().steps(number);
        return steps.isEmpty()
                ? Optional.empty()
                : Optional.of(steps.get(steps.size() - 1).what())
                        .filter(step -> step.rules().equals(rules))
                        .map(NewChangeStep::body);
    }

    /**
     * The working copy as it was handed in last, by path.
     *
     * @throws FaultyInput when none of that number was handed in
     */
    public SortedMap<String, String> files(String number) {
        one(number);
        return store.changes().steps(number).stream()
                .map(KeptChangeStep::what)
                .filter(step -> step.act() == Act.CHANGE_SUBMITTED)
                .reduce((earlier, later) -> later)
                .map(step -> ReleaseFiles.unpacked(step.files()).texts())
                .orElseThrow();
    }

    /**
     * Rules and knowledge of a change as they were handed in last.
     *
     * @throws FaultyInput when none of that number was handed in
     */
    public Bundle rules(String number) {
        SortedMap<String, String> files = new TreeMap<>(files(number));
        files.keySet().removeIf(path -> path.startsWith("features/"));
        return Bundle.of(files);
    }

    private static FaultyInput fault(String number, String says) {
        return new FaultyInput("change", List.of(new Fault("change " + number, says)));
    }
}
