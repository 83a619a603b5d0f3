package org.tunica.watching;

import java.math.BigDecimal;
import org.tunica.casefile.UcumWords;
import org.tunica.knowledge.Quantity;

/** A number of knowledge/ with its unit, unrounded. */
final class Amount {
    private Amount() {}

    static String of(Quantity number) {
        return BigDecimal.valueOf(number.value()).stripTrailingZeros().toPlainString()
                + UcumWords.behind(number.unit());
    }
}
