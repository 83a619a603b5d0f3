package org.tunica.releases;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.store.Actor;
import org.tunica.store.FeedbackBook;
import org.tunica.store.HookFeedback;
import org.tunica.store.Judgement;
import org.tunica.store.Role;
import org.tunica.store.Store;
import org.tunica.store.User;
import org.tunica.store.UserState;

/** Where people who look later say whether it was right to do with a card what was done. */
public final class JudgeDesk {
    private static final Set<Role> JUDGES =
            EnumSet.of(Role.SPECIALIST, Role.MEETING_MEMBER, Role.CLINICAL_LEAD, Role.SAFETY_OFFICER);

    private final Store store;

    /** The feedback kept in a store. */
    public JudgeDesk(Store store) {
        this.store = store;
    }

    /**
     * Keeps what somebody finds.
     *
     * @param judge user name
     * @throws FaultyInput when the judge is nobody who may judge, gives no reason, or nothing of the kind was reported
     */
    public FeedbackBook.KeptJudgement judge(
            Actor by, String judge, HookFeedback report, Judgement.Finding found, String reason) {
        if (reason.isBlank()) {
            throw fault("reason", "must be given, in a sentence that names no patient");
        }
        return store.together(() -> {
            boolean may = store.users()
                    .find(judge)
                    .filter(user -> user.state() == UserState.ACTIVE)
                    .map(User::roles)
                    .filter(roles -> roles.stream().anyMatch(JUDGES::contains))
                    .isPresent();
            if (!may) {
                throw fault(
                        judge,
                        "is nobody here who judges: a specialist, a member of the meeting, a clinical lead or a"
                                + " safety officer does");
            }
            return store.feedback()
                    .judge(
                            by,
                            new Judgement(report.card(), report.outcome(), report.outcomeAt(), found, judge, reason));
        });
    }

    /**
     * The last report of a card.
     *
     * @throws FaultyInput when nothing was reported of it
     */
    public HookFeedback lastOf(String card) {
        List<FeedbackBook.Kept> all = store.feedback().of(card);
        if (all.isEmpty()) {
            throw fault("card " + card, "nobody reported what became of it");
        }
        return all.get(0).feedback();
    }

    private static FaultyInput fault(String place, String says) {
        return new FaultyInput("feedback", List.of(new Fault(place, says)));
    }
}
