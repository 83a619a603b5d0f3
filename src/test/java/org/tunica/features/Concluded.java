package org.tunica.features;

import java.math.BigDecimal;
import org.tunica.knowledge.Quantity;
import org.tunica.rules.Conclusion;

/** A conclusion as scenarios write it: the sentence of the rule with the number in place of each limit. */
final class Concluded {
    private Concluded() {}

    static String inNumbers(Conclusion conclusion) {
        String words = conclusion.sentence();
        for (Quantity limit : conclusion.limits()) {
            words = words.replaceFirst("limit " + limit.id() + "(?= |$)", number(limit));
        }
        return words;
    }

    private static String number(Quantity limit) {
        String value = BigDecimal.valueOf(limit.value()).stripTrailingZeros().toPlainString();
        return limit.unit().equals("1") ? value : value + " " + limit.unit();
    }
}
