package org.tunica.office;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tunica.frame.NotThere;
import org.tunica.frame.Pages;
import org.tunica.governance.Timeline;
import org.tunica.knowledge.Bundle;
import org.tunica.review.Difference;

/** Lays out the page that asks before something is done with a release. */
record ConfirmView(Pages pages, Desks desks) {
    private static final String PATH = "/governance/releases/";
    private static final String AGAIN =
            "The server starts anew with the other rules within seconds, at the same address; everybody signs in again.";

    /** The page, with what was typed and not taken. */
    ConfirmPage page(
            String version, ReleaseAct act, HttpServletRequest request, List<String> faults, ReleaseActs.Typed typed) {
        Timeline timeline = desks.records().timeline();
        if (timeline.story(version).isEmpty()) {
            throw new NotThere("release");
        }
        Optional<String> now = timeline.inForceAt(desks.moment());
        Optional<String> then =
                act == ReleaseAct.ROLLBACK ? timeline.inForceWithout(version, desks.moment()) : Optional.of(version);
        return new ConfirmPage(
                pages.frame(act.says() + ": release " + version, request),
                act.says(),
                PATH + version + "/" + act.hand().word() + "/" + act.word(),
                then.isPresent(),
                PATH + version,
                says(version, act, now, then),
                differences(act, now, then),
                act.asks(),
                faults,
                typed.reason(),
                typed.when());
    }

    private static List<String> says(String version, ReleaseAct act, Optional<String> now, Optional<String> then) {
        String here = now.map(one -> "Release " + one).orElse("The program's own rules, a DRAFT,");
        List<String> says = new ArrayList<>();
        switch (act) {
            case SUBMISSION -> says.add("Release " + version + " goes to those who review and sign it.");
            case WITHDRAWAL -> says.add("Release " + version + " ends here and never comes into force.");
            case REFUSAL -> says.add("Release " + version + " is refused for good; its authors make a new version.");
            case ACTIVATION -> {
                says.add(here + " gives way to release " + version + " at once.");
                says.add(AGAIN);
            }
            case SCHEDULE ->
                says.add(here + " gives way to release " + version
                        + " at the moment you name, whether anybody is awake or not.");
            case SHADOW ->
                says.add("Release " + version
                        + " is asked silently beside each advice; nobody sees what it would have said, only how often it"
                        + " differs.");
            case SHADOW_END -> says.add("Release " + version + " is no longer asked beside.");
            case REVIEW -> says.add("You tell that release " + version + " was looked at again, and when next.");
            case RETIREMENT -> says.add("Release " + version + " can never be gone back to.");
            case ROLLBACK -> {
                if (then.isEmpty()) {
                    says.add("There is no release before it to go back to, so it cannot be rolled back.");
                } else {
                    says.add("Release " + version + " is taken out of force for good.");
                    says.add("Release " + then.get() + " is in force again at once.");
                    says.add(AGAIN);
                }
            }
        }
        return says;
    }

    private List<String> differences(ReleaseAct act, Optional<String> now, Optional<String> then) {
        boolean changesForce = act == ReleaseAct.ACTIVATION || act == ReleaseAct.SCHEDULE || act == ReleaseAct.ROLLBACK;
        if (!changesForce || then.isEmpty()) {
            return List.of();
        }
        List<Difference> differences =
                desks.reviews().of(bundle(then)).since(desks.reviews().of(bundle(now)));
        return Difference.text(differences).lines().toList();
    }

    private Bundle bundle(Optional<String> version) {
        return version.map(known -> desks.records().release(known).files().bundle())
                .orElseGet(Bundle::shipped);
    }
}
