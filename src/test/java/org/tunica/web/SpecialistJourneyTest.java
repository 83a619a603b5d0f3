package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;

/** The specialist's way from the form to a choice, in a real browser and by the keyboard alone. */
@ExtendWith(SharedClinic.class)
class SpecialistJourneyTest {
    /** What is typed, in the order of the form; an arrow picks from radios and lists. */
    private static final List<Map.Entry<String, CharSequence>> TYPED = List.of(
            Map.entry("caseRef", "journey-02"),
            Map.entry("patient.ageYears", "54"),
            Map.entry("limbs[0].side", " "),
            Map.entry("limbs[0].segments[0].ref", "L1"),
            Map.entry("limbs[0].segments[0].vein", "gr"),
            Map.entry("limbs[0].segments[0].level", "thi"),
            Map.entry("limbs[0].segments[0].lengthCm", "380"),
            Map.entry("limbs[0].segments[0].lumenDiameterMm", "6.4"),
            Map.entry("limbs[0].segments[0].wallThicknessMm", "0.38"),
            Map.entry("limbs[0].segments[0].depthToSkinMm", "14"));

    private final Clinic clinic = SharedClinic.clinic();

    @Test
    void fromFormToChoice_byKeyboard() throws Exception {
        clinic.keep("journey-01", "straight-thigh-trunk");
        try (Screen screen = Screen.at(URI.create("http://127.0.0.1:" + clinic.server.port()))) {
            screen.signIn(SharedClinic.SPECIALIST, Clinic.PASSWORD);
            screen.open("/cases");
            follow(screen, "href", "/cases/new");
            for (Map.Entry<String, CharSequence> field : TYPED) {
                screen.tabTo("name", field.getKey());
                screen.press(field.getValue());
            }
            screen.leaves(() -> screen.press(Keys.ENTER));
            assertTrue(screen.text().contains("One thing is to be mended; nothing was saved"), screen.text());
            screen.looks("form");
            follow(screen, "href", "#field-limbs-0-segments-0-lengthCm");
            assertEquals("limbs[0].segments[0].lengthCm", screen.focused("name"));
            screen.open("/cases/journey-01/edit");
            screen.tabTo("name", "limbs[0].segments[0].lengthCm");
            screen.leaves(() -> screen.press(Keys.chord(Keys.CONTROL, "a"), "37", Keys.ENTER));
            waitUntil(screen, "Choose for this segment");
            helpIsOpened(screen);
            choose(screen);
            waitUntil(screen, "Chosen: ");
            screen.looks("advice");
            follow(screen, "href", "/cases/journey-01/similar/L1");
            assertTrue(screen.text().contains("No past case is released here yet"), screen.text());
        }
        assertEquals(3, clinic.store.cases().latest("journey-01").orElseThrow().version());
    }

    /** What a number is and where it comes from, beside the number. */
    private static void helpIsOpened(Screen screen) throws Exception {
        screen.tabTo("class", "help-open");
        screen.press(Keys.ENTER);
        assertTrue(screen.text().contains("by which rules speak of width"), screen.text());
        assertTrue(screen.text().contains("Standing: "), screen.text());
    }

    private static void choose(Screen screen) {
        screen.tabTo("class", "choose-open");
        screen.press(Keys.ENTER);
        screen.tabTo("name", "technique");
        screen.press(" ");
        screen.tabTo("class", "keep-choice");
        screen.leaves(() -> screen.press(Keys.ENTER));
    }

    private static void follow(Screen screen, String attribute, String value) {
        screen.tabTo(attribute, value);
        if (value.startsWith("#")) {
            screen.press(Keys.ENTER);
        } else {
            screen.leaves(() -> screen.press(Keys.ENTER));
        }
    }

    /** The server makes each look at a page that is not whole wait a moment, so looking again is all the waiting there is. */
    private static void waitUntil(Screen screen, String text) {
        for (int looks = 0; looks < 200; looks++) {
            String page = screen.driver.getPageSource();
            if (page.contains(text) && !page.contains(Browser.IN_PART)) {
                return;
            }
            screen.open("/cases/journey-01");
        }
        throw new AssertionError("no " + text + " on " + screen.text());
    }
}
