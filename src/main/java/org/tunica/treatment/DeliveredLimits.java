package org.tunica.treatment;

import java.util.List;
import org.tunica.knowledge.Knowledge;

/**
 * What a record of a delivery is judged by; each is a quantity of knowledge/ with source and standing.
 *
 * @param agreementShare how far two ways to the same number may differ, as a share
 * @param killedFromShare share of draws from which a wall is called probably killed through
 * @param notKilledBelowShare share of draws below which it is called probably not killed through
 */
public record DeliveredLimits(double agreementShare, double killedFromShare, double notKilledBelowShare) {
    /** The ids in knowledge/, in the order of the components. */
    public static final List<String> IDS =
            List.of("delivered.agreement.max", "delivered.killed.from", "delivered.not-killed.below");

    public DeliveredLimits {
        Checked.within("agreementShare", agreementShare, 0, 1);
        Checked.within("killedFromShare", killedFromShare, 0, 1);
        Checked.within("notKilledBelowShare", notKilledBelowShare, 0, killedFromShare);
    }

    /** The limits of a release. */
    public static DeliveredLimits of(Knowledge knowledge) {
        double[] v = IDS.stream().mapToDouble(knowledge::value).toArray();
        return new DeliveredLimits(v[0], v[1], v[2]);
    }
}
