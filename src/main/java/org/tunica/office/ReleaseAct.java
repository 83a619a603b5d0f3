package org.tunica.office;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tunica.governance.ReleaseState;
import org.tunica.store.Role;

/** What can be done with a release from its page. */
public enum ReleaseAct {
    SUBMISSION(Hand.AUTHOR, "Hand over to review", Asks.NOTHING, ReleaseState.DRAFT),
    WITHDRAWAL(
            Hand.AUTHOR, "Take back", Asks.REASON, ReleaseState.DRAFT, ReleaseState.IN_REVIEW, ReleaseState.APPROVED),
    REFUSAL(Hand.EITHER, "Refuse", Asks.REASON, ReleaseState.IN_REVIEW),
    ACTIVATION(Hand.LEAD, "Put in force now", Asks.NOTHING, ReleaseState.APPROVED),
    SCHEDULE(Hand.LEAD, "Plan for later", Asks.MOMENT, ReleaseState.APPROVED),
    SHADOW(Hand.LEAD, "Let it run as a shadow", Asks.NOTHING, ReleaseState.IN_REVIEW, ReleaseState.APPROVED),
    SHADOW_END(Hand.LEAD, "End the shadow", Asks.NOTHING, ReleaseState.IN_REVIEW, ReleaseState.APPROVED),
    REVIEW(Hand.LEAD, "Tell of a review", Asks.DAY_AND_REASON, ReleaseState.ACTIVE),
    RETIREMENT(Hand.LEAD, "Retire", Asks.REASON, ReleaseState.ACTIVE),
    ROLLBACK(Hand.EITHER, "Roll back", Asks.REASON, ReleaseState.ACTIVE);

    private final Hand hand;
    private final String says;
    private final Asks asks;
    private final Set<ReleaseState> in;

    ReleaseAct(Hand hand, String says, Asks asks, ReleaseState first, ReleaseState... others) {
        this.hand = hand;
        this.says = says;
        this.asks = asks;
        this.in = EnumSet.of(first, others);
    }

    /** Who does it. */
    public enum Hand {
        AUTHOR(Role.RULE_AUTHOR),
        LEAD(Role.CLINICAL_LEAD),
        /** Either must be able to stop what does harm. */
        EITHER(Role.CLINICAL_LEAD, Role.SAFETY_OFFICER);

        private final Set<Role> roles;

        Hand(Role first, Role... others) {
            this.roles = EnumSet.of(first, others);
        }

        /** As it stands in an address. */
        String word() {
            return "by-" + name().toLowerCase(Locale.ROOT);
        }

        boolean has(Set<Role> those) {
            return those.stream().anyMatch(roles::contains);
        }
    }

    /** What whoever does it must say. */
    public enum Asks {
        NOTHING,
        REASON,
        MOMENT,
        DAY_AND_REASON
    }

    Hand hand() {
        return hand;
    }

    /** The act as a button says it. */
    public String says() {
        return says;
    }

    /** What is asked. */
    public Asks asks() {
        return asks;
    }

    boolean in(ReleaseState state) {
        return in.contains(state);
    }

    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Optional<ReleaseAct> of(String word) {
        return Stream.of(values()).filter(act -> act.word().equals(word)).findFirst();
    }
}
