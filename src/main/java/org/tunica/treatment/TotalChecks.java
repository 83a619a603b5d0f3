package org.tunica.treatment;

import java.util.OptionalDouble;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.Room;

/** Holds the sums a team counted against the sum of its segments. */
final class TotalChecks {
    private final FieldReader reader;
    private final double agreementShare;

    private TotalChecks(FieldReader reader, double agreementShare) {
        this.reader = reader;
        this.agreementShare = agreementShare;
    }

    static void check(DeliveredSession session, FieldReader root, double agreementShare) {
        TotalChecks checks = new TotalChecks(root, agreementShare);
        GivenDoses doses = new GivenDoses(session);
        DeliveredSession.Totals totals = session.totals();
        checks.same("tumescentMl", totals.tumescentMl(), doses.tumescentMl(), "mL");
        checks.same("lidocaineMg", totals.lidocaineMg(), doses.lidocaineMg(), "mg");
        checks.same("polidocanolMg", totals.polidocanolMg(), doses.drugMg(Room.SclerosantDrug.POLIDOCANOL), "mg");
        checks.same(
                "tetradecylMg",
                totals.tetradecylMg(),
                doses.drugMg(Room.SclerosantDrug.SODIUM_TETRADECYL_SULPHATE),
                "mg");
        checks.same("foamMl", totals.foamMl(), doses.foamMl(), "mL");
        checks.same("adhesiveMl", totals.adhesiveMl(), doses.adhesiveMl(), "mL");
    }

    private void same(String field, OptionalDouble counted, OptionalDouble sum, String unit) {
        if (Agreement.broken(sum, counted, agreementShare)) {
            reader.fault(
                    "totals." + field,
                    "says " + Rounded.text(counted.getAsDouble()) + " " + unit + ", the segments add up to "
                            + Rounded.text(sum.getAsDouble()) + " " + unit + "; at most "
                            + Rounded.text(100 * agreementShare) + " % is accepted");
        }
    }
}
