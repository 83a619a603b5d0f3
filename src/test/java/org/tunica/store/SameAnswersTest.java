package org.tunica.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.casefile.FaultyInput;

/** The two databases cannot be told apart: a long run of acts at random has the same answers, refusals included. */
class SameAnswersTest {
    private static final int ACTS = 400;
    private static final long SEED = 20260301;
    private static final List<String> REFS = List.of("a", "B", "b", "A", "z-9", "Z.1", "_bad", "é");

    @TempDir
    private Path folder;

    @Test
    void aRunOfActsAtRandom_hasTheSameAnswers() throws SQLException {
        List<String> sqlite = run(Engine.SQLITE);
        List<String> postgres = run(Engine.POSTGRESQL);
        assertEquals(String.join("\n", sqlite), String.join("\n", postgres));
        assertTrue(sqlite.stream().anyMatch(line -> line.startsWith("OutOfDate")));
        assertTrue(sqlite.stream().anyMatch(line -> line.startsWith("FaultyInput")));
        long kept =
                sqlite.stream().filter(line -> line.matches("[0-9]+ 2026-.*")).count();
        assertTrue(kept > ACTS / 4, () -> "only " + kept + " acts kept anything");
    }

    private List<String> run(Engine engine) throws SQLException {
        List<String> answers = new ArrayList<>();
        try (Store store = Store.open(engine.freshPlace(folder), new SteppingClock())) {
            Random random = new Random(SEED);
            for (int i = 0; i < ACTS; i++) {
                answers.add(answer(act(store, random)));
            }
            for (String ref : REFS) {
                answers.add(answer(() -> store.cases().history(ref)));
                for (DocumentKind kind : DocumentKind.values()) {
                    answers.add(answer(() -> store.documents().of(ref, kind)));
                }
            }
            answers.add(answer(() -> store.cases().newest(Page.newest(100))));
            answers.add(answer(() -> store.pastCases().since(0, 100)));
            answers.add(answer(() -> store.users().all()));
            answers.add(answer(() -> store.feedback().newest(Page.newest(100))));
            for (AuditRow row : store.audit().newest(Page.newest(Page.LONGEST))) {
                answers.add(row.number() + " " + row.at() + " " + row.actor() + " " + row.act() + " " + row.subject());
            }
            Verification found = store.audit().verify();
            answers.add(found.auditRows() + " " + found.keptRows() + " " + found.faults());
        }
        return answers;
    }

    private static String answer(Supplier<?> act) {
        try {
            return String.valueOf(act.get());
        } catch (OutOfDate | FaultyInput | IllegalArgumentException e) {
            return e.getClass().getSimpleName() + " " + e.getMessage();
        }
    }

    /** Everything random is drawn before the act, so that a refusal does not shift what follows. */
    private static Supplier<?> act(Store store, Random random) {
        Actor by = new Actor("user" + random.nextInt(3));
        String ref = REFS.get(random.nextInt(REFS.size()));
        int small = random.nextInt(4);
        int kind = random.nextInt(5);
        String id = "p-" + random.nextInt(12);
        String text = "{\"n\":" + random.nextLong() + "}";
        String name = "name" + random.nextInt(3);
        return switch (random.nextInt(10)) {
            case 0, 1, 2 -> () -> store.cases().save(by, ref, small, text);
            case 3 ->
                () -> store.documents()
                        .keep(
                                by,
                                new NewDocument(
                                        DocumentKind.values()[kind], ref, small, new Origin("1", "d", small), text));
            case 4 -> () -> store.pastCases().offer(by, id, text);
            case 5 ->
                () -> switch (small) {
                    case 0 -> store.pastCases().refuse(by, id);
                    case 1 -> store.pastCases().bringIn(by, id, text);
                    case 2 -> store.pastCases().rewrite(by, seen(store, id), text);
                    default -> store.pastCases().release(by, seen(store, id), text);
                };
            case 6 ->
                () -> store.users()
                        .save(
                                by,
                                store.users()
                                        .find(name)
                                        .orElse(User.fresh(name, EnumSet.of(Role.values()[kind]), text))
                                        .with(EnumSet.of(Role.values()[small])));
            case 7 -> () -> store.users().signInFailed(name, 2, Duration.ofHours(1));
            case 8 -> () -> store.users().addKey(by, new UserKey(name, id, "sign", text));
            default ->
                () -> store.feedback()
                        .keep(by, new HookFeedback("s", id, "accepted", SteppingClock.START.plusMillis(small), text));
        };
    }

    /** A past case as somebody saw it, or believes to have seen it. */
    private static KeptPastCase seen(Store store, String id) {
        return store.pastCases()
                .one(id)
                .orElseGet(
                        () -> new KeptPastCase(id, PastCaseState.WAITING, "", new Stamp(1, Instant.EPOCH, "nobody")));
    }
}
