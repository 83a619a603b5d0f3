package org.tunica.replay;

import java.util.List;
import java.util.Optional;
import org.tunica.plan.OptionStanding;

/**
 * An option that does not come out the same.
 *
 * @param technique id
 * @param before how it stood; absent when the release before does not know the technique
 * @param after how it stands; absent when the other does not
 * @param settings what of its settings is another
 */
public record ChangedOption(
        String technique,
        Optional<OptionStanding> before,
        Optional<OptionStanding> after,
        List<ChangedSetting> settings) {
    public ChangedOption {
        settings = List.copyOf(settings);
    }

    /** Whether it stands otherwise. */
    public boolean standsOtherwise() {
        return !before.equals(after);
    }

    boolean lostItsExclusion() {
        return was(OptionStanding.EXCLUDED) && after.isPresent() && !is(OptionStanding.EXCLUDED);
    }

    boolean isNewlyExcluded() {
        return is(OptionStanding.EXCLUDED) && !was(OptionStanding.EXCLUDED);
    }

    /** An option nobody knew before stands better than none at all. */
    boolean standsBetter() {
        return after.isPresent() && (before.isEmpty() || after.get().compareTo(before.get()) < 0);
    }

    boolean was(OptionStanding standing) {
        return before.equals(Optional.of(standing));
    }

    private boolean is(OptionStanding standing) {
        return after.equals(Optional.of(standing));
    }
}
