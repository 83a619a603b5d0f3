package org.tunica.callers;

import java.time.Instant;

/** The tokens that were used, so that none is used twice. Safe for several threads. */
public interface SeenTokens {
    /**
     * Notes a token.
     *
     * @param issuer who signed it
     * @param id its name among the tokens of that issuer
     * @param until after which it is no longer valid and may be forgotten
     * @return whether it was not seen before; of several that ask at once about one token, one is told so
     */
    boolean firstTime(String issuer, String id, Instant until);

    /** What was used before is not remembered: a token made earlier may have been used, and must be refused. */
    Instant since();
}
