package org.tunica.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The digests are what coreutils' sha256sum says of the same bytes, so anybody can check a trail without this program. */
class FingerprintTest {
    /** {@code printf '1:a,0:,2:\xc3\xa9,' | sha256sum}. */
    @Test
    void textsAreWrittenWithTheirLengthInBytes() {
        assertEquals(
                "60fd13b1f66bdbe50a630691ab260d509ef68c9e74e1160442727b1e50705b2d",
                Fingerprint.of(List.of("a", "", "é")));
        assertNotEquals(Fingerprint.of(List.of("a", "bc")), Fingerprint.of(List.of("ab", "c")));
    }

    /** {@code printf '1:1,13:1772352000000,4:anna,6:viewed,4:case,3:c/1,0:,64:<64 noughts>,' | sha256sum}. */
    @Test
    void theFirstRowOfATrail_hasTheHashThatAnybodyComputes() {
        AuditRow row = AuditRow.after(
                AuditHead.NONE, SteppingClock.START, new Actor("anna"), Act.VIEWED, new Subject("case", "c/1"), "");
        assertEquals("5da639c4e02005f75f7bedb93a500f14f2776e33e68fcbeaa7093496f8c60199", row.hash());
    }
}
