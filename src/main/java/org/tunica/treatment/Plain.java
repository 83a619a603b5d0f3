package org.tunica.treatment;

import java.math.BigDecimal;

/** Numbers as people write them: no more digits than they have. */
final class Plain {
    private Plain() {}

    static String number(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
