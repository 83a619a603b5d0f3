package org.tunica;

import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.tunica.knowledge.Bundle;

/** Rules nobody has asked for heat yet: one constant of heat is a hair off, so that nothing found before is of use. */
public final class Cold {
    private static final String DEVICES = "knowledge/heat-devices.yaml";
    private static final String FILM = "heat.laser.film:\n  says: fluid film around a fibre\n  value: 0.30";
    private static final AtomicInteger ASKED = new AtomicInteger();

    private Cold() {}

    public static Tunica tunica() {
        Map<String, String> texts = new TreeMap<>(Bundle.shipped().texts());
        String film = FILM + String.format("%06d", ASKED.incrementAndGet());
        if (!texts.get(DEVICES).contains(FILM)) {
            throw new IllegalStateException("no film around a fibre in " + DEVICES);
        }
        texts.put(DEVICES, texts.get(DEVICES).replace(FILM, film));
        return Tunica.of(Bundle.of(texts));
    }
}
