package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.io.File;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.core.convert.ConversionService;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.context.SecurityContextImpl;
import org.tunica.store.Role;

/** What comes back out of a session's bytes, and what does not. */
class SessionBytesTest {
    private static final ConversionService CONVERSION = SessionBytes.conversion();

    private static byte[] bytes(Object object) {
        return CONVERSION.convert(object, byte[].class);
    }

    @Test
    void whoSignedIn_comesBack() {
        LocalUser robin = new LocalUser("robin", "{bcrypt}x", Set.of(Role.SPECIALIST), true, false);
        SecurityContextImpl signedIn = new SecurityContextImpl(
                UsernamePasswordAuthenticationToken.authenticated(robin, null, robin.getAuthorities()));
        assertEquals(signedIn, SessionBytes.read(bytes(signedIn)));
        Instant moment = Instant.parse("2026-03-20T10:00:00Z");
        assertEquals(moment, SessionBytes.read(bytes(moment)));
    }

    /** Classes that a row somebody else wrote could name, also deep inside what is known. */
    @Test
    void otherClasses_areNotThere() {
        assertNull(SessionBytes.read(bytes(new File("/"))));
        assertNull(SessionBytes.read(bytes(new ArrayList<>(List.of(new File("/"))))));
        assertNull(SessionBytes.read(new byte[] {1, 2, 3}));
        assertNull(SessionBytes.read(bytes("x".repeat(600_000))), "longer than any session of ours");
    }
}
