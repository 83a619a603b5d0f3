package org.tunica.store;

import java.time.Instant;

/** Tokens that were used at any of several servers over one database. Safe for several threads and programs. */
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
}
