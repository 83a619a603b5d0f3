package org.tunica.pastcases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.Limb;
import org.tunica.knowledge.Family;
import org.tunica.treatment.DeliveredSegment;
import org.tunica.treatment.DeliveredSession;
import org.tunica.treatment.FollowUp;
import org.tunica.treatment.TreatedPlan;
import org.tunica.treatment.TreatedSegment;

/** Five hundred notes with an identifier each, and every free text of a record: none comes out anywhere. */
class PlantedIdentifiersTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final int NOTES = 500;
    private static final int NOTES_OF_A_CASE = 10;
    private static final long SEED = 20_260_101;

    private final Leaks leaks = new Leaks(TUNICA.knowledge().words());
    private final Planted planted = new Planted(SEED);
    private int ids;

    @Test
    void notesAndFreeTexts_loseEveryIdentifier() throws IOException {
        List<String> found = new ArrayList<>();
        int identifiers = 0;
        for (int from = 0; from < NOTES; from += NOTES_OF_A_CASE) {
            List<Planted.Note> notes = new ArrayList<>();
            for (int i = 0; i < NOTES_OF_A_CASE; i++) {
                notes.add(planted.note(from + i));
            }
            Written written = written(notes);
            WaitingCase waiting = anonymise(written.finished());
            String kept = TUNICA.pastCases().toLine(waiting);
            found.addAll(leaks.in(values(kept), written.identifiers()));
            found.addAll(leaks.in(values(TUNICA.pastCases().toLine(waiting.released())), written.identifiers()));
            identifiers += written.identifiers().size();
            assertTrue(kept.contains("[...]"), "something was there");
        }
        assertEquals(List.of(), found, "of " + identifiers);
        assertTrue(identifiers > 800, "identifiers planted: " + identifiers);
    }

    /** What the search for leaks finds when nothing is taken out: it must see nearly all that was planted. */
    @Test
    void searchForLeaks_seesThemWhereNothingIsScrubbed() {
        List<Planted.Note> notes = planted.notes(NOTES);
        long seen = notes.stream()
                .filter(note ->
                        !leaks.in(note.text(), List.of(note.identifier())).isEmpty())
                .count();
        assertTrue(seen >= NOTES * 0.98, seen + " of " + NOTES);
    }

    @Test
    void refusals_showNothingOfWhatWasGiven() throws IOException {
        List<Planted.Note> notes = planted.notes(40);
        Written written = written(notes);
        List<String> names = new ArrayList<>(written.identifiers());
        names.add("Thornbury");
        Finished good = written.finished();
        List<Finished> refused = List.of(
                new Finished(
                        good.caseFile(),
                        good.delivered(),
                        good.followUp(),
                        good.year(),
                        "site of Thornbury",
                        true,
                        good.notes()),
                new Finished(good.caseFile(), List.of(), good.followUp(), good.year(), good.site(), true, good.notes()),
                new Finished(
                        good.caseFile(),
                        good.delivered(),
                        new FollowUp("Thornbury", good.followUp().limbs()),
                        good.year(),
                        good.site(),
                        true,
                        good.notes()));
        for (Finished one : refused) {
            FaultyInput faulty = assertThrows(FaultyInput.class, () -> anonymise(one));
            assertEquals(List.of(), leaks.in(faulty.getMessage(), names), faulty.getMessage());
        }
    }

    /** A faulty line of a base may hold a name anywhere; messages about it end in logs. */
    @Test
    void faultyLines_areToldWithoutWhatStoodThere() {
        String name = "Thornbury 5551234";
        for (String faulty : List.of(
                PastCaseReaderTest.INVENTED.replace("\"thigh\"", "\"" + name + "\""),
                PastCaseReaderTest.INVENTED.replace("site-a1", name),
                PastCaseReaderTest.INVENTED.replace("\"C2,4as,Ep,As(GSVa),Pr\"", "\"" + name + "\""),
                PastCaseReaderTest.INVENTED.replace("\"invented\"", "\"Thornbury\":5551234,\"invented\""),
                PastCaseReaderTest.INVENTED.replace("7.4", "5551234"),
                PastCaseReaderTest.INVENTED.replace("7.4", "\"" + name + "\""),
                PastCaseReaderTest.INVENTED.replace("7.4", "Thornbury"),
                PastCaseReaderTest.INVENTED.replace("\"L1\"", "\"" + name + "\""),
                PastCaseReaderTest.INVENTED.replace("no pain", name))) {
            FaultyInput told = assertThrows(
                    FaultyInput.class,
                    () -> TUNICA.pastCases().readPastCase("line 1", faulty.getBytes(StandardCharsets.UTF_8)),
                    faulty);
            assertEquals(List.of(), leaks.in(told.getMessage(), List.of(name)), told.getMessage());
        }
    }

    /** A line without the names of its fields and the year, which are always there. */
    private static String values(String line) {
        return line.replaceAll("\"year\":[0-9]{4}|\"[A-Za-z]+\":", "");
    }

    /** The records and everything in them that could name somebody. */
    record Written(Finished finished, List<String> identifiers) {}

    private Written written(List<Planted.Note> notes) throws IOException {
        List<String> identifiers = new ArrayList<>();
        DeliveredSession session = session(identifiers);
        notes.forEach(note -> identifiers.add(note.identifier()));
        return new Written(
                new Finished(
                        caseFile(),
                        List.of(session),
                        FollowUp.read("follow-up", demo("follow-up/both-legs-many-segments.json"), TUNICA.knowledge()),
                        OptionalInt.empty(),
                        "site-a1",
                        true,
                        notes.stream().map(Planted.Note::text).toList()),
                identifiers);
    }

    private DeliveredSession session(List<String> identifiers) throws IOException {
        DeliveredSession demo =
                TUNICA.treatments().readDelivered("delivered", demo("delivered/both-legs-many-segments.json"));
        List<DeliveredSegment> segments = demo.segments().stream()
                .map(segment -> segment.notDone().isPresent()
                        ? Doing.with(segment, Optional.of(text(identifiers)), Optional.empty())
                        : Doing.with(segment, Optional.empty(), Optional.of(text(identifiers))))
                .toList();
        identifiers.add(demo.date().orElseThrow().substring("2026-".length())); // the year stays
        identifiers.add(demo.caseRef());
        return new DeliveredSession(
                demo.format(),
                demo.caseRef(),
                demo.session(),
                demo.date(),
                demo.people(),
                Optional.of(text(identifiers)),
                demo.severityPoints(),
                demo.consent(),
                demo.timeOut(),
                demo.otherLidocaineMg(),
                demo.otherAdrenaline(),
                demo.totals(),
                segments,
                new DeliveredSession.Aftercare(
                        Optional.of(text(identifiers)),
                        Optional.of(text(identifiers)),
                        Optional.of(true),
                        Optional.of(text(identifiers))));
    }

    private String text(List<String> identifiers) {
        Planted.Note note = planted.note(ids++);
        identifiers.add(note.identifier());
        return note.text();
    }

    private WaitingCase anonymise(Finished finished) throws IOException {
        return TUNICA.pastCases().anonymise(finished, planned(), () -> String.format("p-%024x", ids++));
    }

    /** What was delivered, as if planned: a plan of its own would take longer than all the rest. */
    private static TreatedPlan planned() throws IOException {
        List<TreatedSegment> segments = new ArrayList<>();
        for (Limb limb : caseFile().limbs()) {
            limb.segments()
                    .forEach(segment -> segments.add(new TreatedSegment(
                            segment.ref(),
                            limb.side(),
                            segment.vein(),
                            segment.level(),
                            "foam-polidocanol",
                            "foam",
                            Family.FOAM,
                            OptionalDouble.empty())));
        }
        return new TreatedPlan(caseFile().caseRef(), segments, false);
    }

    private static CaseFile caseFile() throws IOException {
        return TUNICA.readCase("case", demo("both-legs-many-segments.json"));
    }

    private static byte[] demo(String name) throws IOException {
        return Files.readAllBytes(Path.of("knowledge/demo", name));
    }
}
