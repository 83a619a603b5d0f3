package org.tunica.rules;

import java.util.List;

/** Turns answers into plain types for {@link HandRules}; public because the written class calls it. */
public final class HandReader {
    private HandReader() {}

    /** The other segments of the leg. */
    public static List<AnswerBook> elsewhere(OptionFacts facts) {
        return List.copyOf(facts.elsewhere());
    }

    /** A number, NaN when unknown. */
    public static double number(Answer answer) {
        return answer instanceof Answer.Number number ? number.value() : Double.NaN;
    }

    /** 1 yes, 0 no, -1 unknown. */
    public static int flag(Answer answer) {
        return answer instanceof Answer.Flag flag ? (flag.holds() ? 1 : 0) : -1;
    }

    /** The place of a word, -1 when unknown. */
    public static int word(Answer answer, List<String> words) {
        return answer instanceof Answer.OneWord word ? words.indexOf(word.word()) : -1;
    }

    /** A bit for each word that is held. */
    public static long bits(Answer answer, List<String> words) {
        long bits = 0;
        for (int i = 0; i < words.size(); i++) {
            if (answer instanceof Answer.Words held && held.words().contains(words.get(i))) {
                bits |= 1L << i;
            }
        }
        return bits;
    }
}
