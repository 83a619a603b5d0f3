package org.tunica.plan;

import java.util.Locale;
import java.util.Map;

/** Says what settled a tie, with both numbers. */
final class TieWords {
    private static final double PERCENT = 100;

    private TieWords() {}

    static TieAdvice of(OptionAdvice before, OptionAdvice after, Map<String, TieKey> keys) {
        TieKey mine = keys.get(before.technique());
        TieKey theirs = keys.get(after.technique());
        TieAdvice.SettledBy by = by(mine, theirs);
        return new TieAdvice(
                after.technique(),
                by,
                "even on points with " + after.says() + "; stands before it " + because(by, mine, theirs));
    }

    private static TieAdvice.SettledBy by(TieKey mine, TieKey theirs) {
        if (mine.deathShare() != theirs.deathShare()) {
            return TieAdvice.SettledBy.WHOLE_WALL_KILL;
        }
        if (mine.charShare() != theirs.charShare()) {
            return TieAdvice.SettledBy.CHAR;
        }
        if (mine.nerveC() != theirs.nerveC()) {
            return TieAdvice.SettledBy.NERVE_WARMTH;
        }
        return mine.durabilityShare() != theirs.durabilityShare()
                ? TieAdvice.SettledBy.DURABILITY
                : TieAdvice.SettledBy.NAME;
    }

    private static String because(TieAdvice.SettledBy by, TieKey mine, TieKey theirs) {
        return switch (by) {
            case WHOLE_WALL_KILL ->
                "for the chance that the whole wall dies, " + percent(mine.deathShare()) + " against "
                        + percent(theirs.deathShare());
            case CHAR ->
                "for the chance of char, " + percent(mine.charShare()) + " against " + percent(theirs.charShare());
            case NERVE_WARMTH ->
                "for the warmth at the nerve that nine draws of ten keep, " + warmth(mine) + " against "
                        + warmth(theirs);
            case DURABILITY ->
                "for the mean of the published rates of lasting closure, " + percent(mine.durabilityShare())
                        + " against " + percent(theirs.durabilityShare());
            case NAME -> "by name alone, which is no reason";
        };
    }

    private static String warmth(TieKey key) {
        return Double.isFinite(key.nerveC())
                ? String.format(Locale.ROOT, "%.1f degrees Celsius", key.nerveC())
                : "not computed";
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", PERCENT * share).replace(".0 %", " %");
    }
}
