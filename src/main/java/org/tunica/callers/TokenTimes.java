package org.tunica.callers;

import com.nimbusds.jwt.JWTClaimsSet;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Date;

/**
 * When a token is valid. It must say when it was made and when it ends, and may not live longer than the tokens seen are
 * remembered.
 *
 * @param clock tells the time
 * @param skew how far two clocks may differ
 * @param longestLife from its making to its end
 */
record TokenTimes(Clock clock, Duration skew, Duration longestLife) {
    /**
     * Holds a token against the clock and returns after when it can be forgotten.
     *
     * @param since when the tokens that were used are remembered
     */
    Instant check(JWTClaimsSet claims, Instant since) throws TokenRefused {
        Instant now = clock.instant();
        Instant end = instant(claims.getExpirationTime(), "says not when it ends");
        Instant made = instant(claims.getIssueTime(), "says not when it was made");
        refuseIf(!end.isAfter(now.minus(skew)), "has ended");
        refuseIf(made.isAfter(now.plus(skew)), "is made in the future");
        refuseIf(made.isBefore(now.minus(longestLife).minus(skew)), "was made too long ago");
        refuseIf(made.isBefore(since), "was made before the tokens that were used are remembered");
        refuseIf(end.isAfter(made.plus(longestLife)), "lives too long");
        Date notBefore = claims.getNotBeforeTime();
        refuseIf(notBefore != null && notBefore.toInstant().isAfter(now.plus(skew)), "is not valid yet");
        return end.plus(skew);
    }

    private static Instant instant(Date date, String otherwise) throws TokenRefused {
        refuseIf(date == null, otherwise);
        return date.toInstant();
    }

    private static void refuseIf(boolean refused, String why) throws TokenRefused {
        if (refused) {
            throw new TokenRefused("the token " + why);
        }
    }
}
