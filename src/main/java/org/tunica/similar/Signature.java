package org.tunica.similar;

/**
 * A profile made coarse, as one number by which the index is sorted, so that like segments stand side by side: first which
 * fields are known at all and the kind of settings, then the fields from the heaviest on. It orders and decides nothing.
 */
final class Signature {
    /** Steps into which a number is parted, in thousandths, and how many bits they take. */
    private enum Part {
        SETTINGS(Field.SETTINGS, 3, 1),
        VEIN(Field.VEIN, 3, 1),
        LUMEN(Field.RELAXED_LUMEN, 4, 1_000),
        WALL(Field.RELAXED_WALL, 4, 100),
        LEVEL(Field.LEVEL, 3, 1),
        NERVE(Field.NERVE_GAP, 3, 4_000),
        TECHNIQUE(Field.TECHNIQUE, 5, 1),
        COURSE(Field.COURSE, 2, 1),
        DEPTH(Field.DEPTH_TO_SKIN, 2, 8_000),
        CEAP(Field.CEAP_CLASS, 4, 1),
        ANTICOAGULATION(Field.ANTICOAGULATION, 2, 1),
        EARLIER(Field.EARLIER_TREATMENT, 3, 1),
        POSITION(Field.POSITION, 2, 1);

        private final Field field;
        private final int bits;
        private final int step;

        Part(Field field, int bits, int step) {
            this.field = field;
            this.bits = bits;
            this.step = step;
        }

        long of(Profile profile) {
            int value = profile.at(field.column());
            long most = (1L << bits) - 1;
            return value == Profile.UNKNOWN ? 0 : Math.min(most, Math.max(0, value / step));
        }
    }

    private Signature() {}

    static long of(Profile profile) {
        long signature = mask(profile);
        for (Part part : Part.values()) {
            signature = signature << part.bits | part.of(profile);
        }
        return signature;
    }

    /** A bit for each field that is known. */
    static int mask(Profile profile) {
        int mask = 0;
        for (Field field : Field.values()) {
            mask |= profile.knows(field) ? 1 << field.ordinal() : 0;
        }
        return mask;
    }
}
