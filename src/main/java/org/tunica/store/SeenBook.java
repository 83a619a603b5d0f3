package org.tunica.store;

import java.time.Instant;

/** Tokens that were used at any server over one store, now or before it was started. Safe for several threads and programs. */
public interface SeenBook {
    /**
     * Notes a token.
     *
     * @param issuer who signed it
     * @param id its name among the tokens of that issuer
     * @param until after which it is no longer valid
     * @return whether it was not seen before; of several that ask at once about one token, one is told so
     * @throws StoreUnavailable when the database cannot tell; the token must be refused then
     */
    boolean firstTime(String issuer, String id, Instant until);

    /**
     * Since when tokens are remembered, to the second, as tokens tell it: since the store was restored from a backup, as none
     * holds any; else since ever.
     *
     * @throws StoreUnavailable when the database cannot tell
     */
    Instant since();
}
