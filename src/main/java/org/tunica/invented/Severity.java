package org.tunica.invented;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;
import org.tunica.casefile.Limb;
import org.tunica.knowledge.Knowledge;
import org.tunica.treatment.SeverityGrades;

/** Grades of the clinical severity score that go with a clinical class. */
final class Severity {
    private static final int ITEMS = 10;
    private static final int WORST = 3;
    private static final int VARICOSE = 1;
    private static final int SWOLLEN = 2;
    private static final int STAINED = 3;
    private static final int HARD = 5;
    private static final int ULCER_FROM = 6;
    private static final int ULCER_TO = 8;

    private final Curve total;
    private final double unrecordedShare;

    Severity(Knowledge knowledge) {
        this.total = Curve.of(knowledge.invented("invented.severity"));
        this.unrecordedShare = knowledge.invented("invented.unrecorded").number("severity");
    }

    /** Grades before, or none recorded. */
    Optional<int[]> before(Draw draw, Limb.CeapClass ceapClass) {
        int[] grades = least(ceapClass);
        int points = (int) Math.rint(total.from(draw));
        for (int tries = 0; tries < ITEMS * ITEMS && Arrays.stream(grades).sum() < points; tries++) {
            int item = draw.below(ITEMS);
            if (grades[item] < most(item, ceapClass)) {
                grades[item]++;
            }
        }
        return draw.happens(unrecordedShare) ? Optional.empty() : Optional.of(grades);
    }

    /** Grades later: less of each, less so while a vein is open. */
    static int[] later(Draw draw, int[] before, boolean allClosed) {
        int[] grades = before.clone();
        for (int i = 0; i < ITEMS; i++) {
            grades[i] = (int) Math.rint(grades[i] * draw.between(0, allClosed ? 0.8 : 1.2));
        }
        return grades;
    }

    /** Signs without which the class would be another. */
    private static int[] least(Limb.CeapClass ceapClass) {
        int[] grades = new int[ITEMS];
        grades[VARICOSE] = 1;
        grades[SWOLLEN] = ceapClass == Limb.CeapClass.C3 ? 1 : 0;
        grades[STAINED] = most(STAINED, ceapClass) > 0 ? 1 : 0;
        for (int item = ULCER_FROM; item <= ULCER_TO; item++) {
            grades[item] = most(item, ceapClass) > 0 ? 1 : 0;
        }
        return grades;
    }

    /** Signs that the class does not hold are graded nought. */
    private static int most(int item, Limb.CeapClass ceapClass) {
        boolean ulcer = ceapClass == Limb.CeapClass.C6 || ceapClass == Limb.CeapClass.C6R;
        if (item >= ULCER_FROM && item <= ULCER_TO) {
            return ulcer ? 2 : 0;
        }
        if (item == HARD) {
            return ceapClass.compareTo(Limb.CeapClass.C4B) >= 0 ? 2 : 0;
        }
        if (item == SWOLLEN) {
            return ceapClass.compareTo(Limb.CeapClass.C3) >= 0 ? WORST : 0;
        }
        return item < STAINED || item > ULCER_TO || ceapClass.compareTo(Limb.CeapClass.C4A) >= 0 ? WORST : 0;
    }

    static SeverityGrades grades(int[] g) {
        return new SeverityGrades(
                grade(g[0]),
                grade(g[1]),
                grade(g[2]),
                grade(g[3]),
                grade(g[4]),
                grade(g[5]),
                grade(g[6]),
                grade(g[7]),
                grade(g[8]),
                grade(g[9]));
    }

    private static OptionalInt grade(int grade) {
        return OptionalInt.of(Math.min(WORST, grade));
    }
}
