package org.tunica.web;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.ObjectInputFilter;
import java.io.ObjectInputStream;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.convert.ConversionService;
import org.springframework.core.convert.support.GenericConversionService;
import org.springframework.core.serializer.support.SerializingConverter;

/**
 * What stands in a session, as bytes and back. The sign-in library knows its own objects alone, so they are written as such;
 * read back are only classes of this list, whoever wrote the row. What cannot be read, such as the session of another version
 * of this program, counts as not there: whoever it was signs in again.
 */
final class SessionBytes {
    private static final Logger LOG = LoggerFactory.getLogger(SessionBytes.class);

    private static final int MOST_BYTES = 500_000;

    private static final ObjectInputFilter KNOWN = ObjectInputFilter.Config.createFilter(
            "maxdepth=30;maxrefs=5000;java.lang.*;java.util.*;java.time.*;java.net.URL;java.net.URI;"
                    + "org.springframework.security.**;org.tunica.web.*;org.tunica.store.Role;!*");

    private SessionBytes() {}

    static ConversionService conversion() {
        GenericConversionService conversion = new GenericConversionService();
        conversion.addConverter(Object.class, byte[].class, new SerializingConverter());
        conversion.addConverter(byte[].class, Object.class, SessionBytes::read);
        return conversion;
    }

    static @Nullable Object read(byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            LOG.warn("Something in a session is longer than {} bytes", MOST_BYTES);
            return null;
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes))) {
            in.setObjectInputFilter(KNOWN);
            return in.readObject();
        } catch (IOException | ClassNotFoundException | RuntimeException e) {
            LOG.warn(
                    "Something in a session could not be read ({})",
                    e.getClass().getSimpleName());
            return null;
        }
    }
}
