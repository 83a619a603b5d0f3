package org.tunica.invented;

import java.util.SplittableRandom;

/** The chances of one case: the same for the same seed and number of the case, whatever was drawn before. */
final class Draw {
    private static final double UNIT = 0x1p-53;

    private final SplittableRandom random;

    Draw(long seed, long number) {
        // two streams that start a whole step of the generator apart would be one stream shifted
        this.random = new SplittableRandom(mixed(mixed(seed) + number));
    }

    /** A number between 0 and 1, both excluded. */
    double fraction() {
        return ((random.nextLong() >>> 11) + 0.5) * UNIT;
    }

    /** Whether something happens that happens in a share of all cases. */
    boolean happens(double share) {
        return fraction() < share;
    }

    /** A number between two others. */
    double between(double low, double high) {
        return low + fraction() * (high - low);
    }

    /** A whole number from 0, below a bound. */
    int below(int bound) {
        return (int) (fraction() * bound);
    }

    /** So many hexadecimal digits, at most 16. */
    String hex(int digits) {
        String all = Long.toHexString(random.nextLong());
        return "0".repeat(16 - all.length()).concat(all).substring(0, digits);
    }

    /** The finaliser of a well-known hash, so that near seeds have nothing in common. */
    private static long mixed(long value) {
        long one = (value ^ (value >>> 33)) * 0xff51afd7ed558ccdL;
        long two = (one ^ (one >>> 33)) * 0xc4ceb9fe1a85ec53L;
        return two ^ (two >>> 33);
    }
}
