package org.tunica.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tunica.casefile.FaultyInput;

/** What every store promises, on either database. */
class StoreContractTest {
    private static final Actor ANNA = new Actor("anna");
    private static final Actor BEN = new Actor("ben");
    private static final Origin ORIGIN = new Origin("0.1.0", "sha256:abc", -42);

    /** What databases and drivers like to change: quotes, marks of placeholders, every plane, composed and not, empty. */
    private static final List<String> AWKWARD = List.of(
            "{\"a\":\"é e\u0301 ß Ω 日本 \uD83E\uDDB5\"}",
            "'; drop table cases; -- ? :x {0} %s \\ \\u0000 \"\" ''",
            "\uFEFF \u200F\u202E\r\n\t\u0001\u007F\u0085\uFFFF",
            "");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource
    void aCase_isKeptVersionByVersion(Engine engine) throws SQLException {
        try (Store store = open(engine)) {
            KeptCase first = store.cases().save(ANNA, "larkspur-11", Cases.NONE, "{\"v\":1}");
            KeptCase second = store.cases().save(BEN, "larkspur-11", first.version(), "{\"v\":2}");
            store.cases().save(BEN, "foxglove-2", Cases.NONE, "{}");

            assertEquals(new KeptCase("larkspur-11", 1, "{\"v\":1}", new Stamp(1, SteppingClock.START, "anna")), first);
            assertEquals(Optional.of(second), store.cases().latest("larkspur-11"));
            assertEquals(Optional.of(first), store.cases().version("larkspur-11", 1));
            assertEquals(List.of(first, second), store.cases().history("larkspur-11"));
            assertEquals(Optional.empty(), store.cases().latest("nightshade"));
            List<KeptCase> newest = store.cases().newest(Page.newest(1));
            assertEquals("foxglove-2", newest.get(0).caseRef());
            assertEquals(
                    List.of(second),
                    store.cases().newest(Page.newest(9).after(newest.get(0).stamp())));
        }
    }

    @ParameterizedTest
    @EnumSource
    void aCaseMadeFromAnOlderVersion_isRefused(Engine engine) throws SQLException {
        try (Store store = open(engine)) {
            store.cases().save(ANNA, "larkspur-11", Cases.NONE, "{\"v\":1}");
            store.cases().save(ANNA, "larkspur-11", 1, "{\"v\":2}");
            AuditHead before = store.audit().head();

            OutOfDate late = assertThrows(OutOfDate.class, () -> store.cases().save(BEN, "larkspur-11", 1, "{}"));
            assertThrows(OutOfDate.class, () -> store.cases().save(BEN, "larkspur-11", Cases.NONE, "{}"));
            assertThrows(OutOfDate.class, () -> store.cases().save(BEN, "foxglove-2", 3, "{}"));

            assertEquals("case larkspur-11: version 2 is the latest, this was made from version 1", late.getMessage());
            assertEquals(before, store.audit().head());
        }
    }

    @ParameterizedTest
    @EnumSource
    void everyText_comesBackCharacterByCharacter(Engine engine) throws SQLException {
        try (Store store = open(engine)) {
            long version = Cases.NONE;
            for (String text : AWKWARD) {
                version = store.cases().save(ANNA, "c", version, text).version();
                assertEquals(text, store.cases().latest("c").orElseThrow().json());
            }
            String million = "\uD83E\uDDB5".repeat(500_000);
            store.cases().save(ANNA, "c", version, million);
            assertEquals(million, store.cases().latest("c").orElseThrow().json());
            assertEquals(List.of(), store.audit().verify().faults());
        }
    }

    @ParameterizedTest
    @EnumSource
    void aTextThatOneDatabaseWouldChange_isRefusedByBoth(Engine engine) throws SQLException {
        try (Store store = open(engine)) {
            for (String text : List.of("a\u0000b", "\uD83E", "\uDDB5\uD83E")) {
                assertThrows(FaultyInput.class, () -> store.cases().save(ANNA, "c", Cases.NONE, text));
            }
            assertThrows(FaultyInput.class, () -> store.cases().save(ANNA, "Jane Doe", Cases.NONE, "{}"));
            assertEquals(AuditHead.NONE, store.audit().head());
        }
    }

    @ParameterizedTest
    @EnumSource
    void documents_areKeptWithTheVersionTheyWereMadeFrom(Engine engine) throws SQLException {
        try (Store store = open(engine)) {
            store.cases().save(ANNA, "c", Cases.NONE, "{}");
            NewDocument advice = new NewDocument(DocumentKind.ADVICE, "c", 1, ORIGIN, "{\"advice\":1}");
            KeptDocument first = store.documents().keep(ANNA, advice);
            KeptDocument again = store.documents().keep(BEN, advice);
            KeptDocument plan = store.documents().keep(BEN, new NewDocument(DocumentKind.PLAN, "c", 1, ORIGIN, "{}"));

            assertEquals(1, first.number());
            assertEquals(2, again.number());
            assertEquals(1, plan.number());
            assertEquals(List.of(first, again), store.documents().of("c", DocumentKind.ADVICE));
            assertEquals(Optional.of(plan), store.documents().one("c", DocumentKind.PLAN, 1));
            assertEquals(Optional.empty(), store.documents().one("c", DocumentKind.NOTE, 1));
            assertEquals(
                    List.of("plan-made", "advice-given", "advice-given", "case-saved"),
                    store.audit().newest(Page.newest(9)).stream()
                            .map(AuditRow::act)
                            .toList());
            FaultyInput fault = assertThrows(
                    FaultyInput.class,
                    () -> store.documents().keep(ANNA, new NewDocument(DocumentKind.NOTE, "c", 2, ORIGIN, "{}")));
            assertTrue(fault.getMessage().contains("note of case c: there is no version 2 of this case"));
        }
    }

    @ParameterizedTest
    @EnumSource
    void aPastCase_waitsForAPersonAndIsForgottenWhenRefused(Engine engine) throws SQLException {
        try (Store store = open(engine)) {
            PastCaseShelf shelf = store.pastCases();
            KeptPastCase first = shelf.offer(ANNA, "p-1", "{\"id\":\"p-1\",\"age\":[60,65]}");
            shelf.offer(ANNA, "p-2", "{\"id\":\"p-2\"}");
            KeptPastCase third = shelf.offer(ANNA, "p-3", "{\"id\":\"p-3\"}");
            KeptPastCase coarser = shelf.rewrite(BEN, first, "{\"id\":\"p-1\"}");
            assertThrows(OutOfDate.class, () -> shelf.release(BEN, first, "{\"id\":\"p-1\"}"), "not what was seen");
            KeptPastCase released = shelf.release(BEN, coarser, "{\"id\":\"p-1\",\"past\":true}");
            KeptPastCase refused = shelf.refuse(BEN, "p-2");
            KeptPastCase brought = shelf.bringIn(ANNA, "p-4", "{\"id\":\"p-4\"}");

            assertEquals("{\"id\":\"p-1\",\"past\":true}", released.line());
            assertEquals("", refused.line());
            assertEquals(List.of(brought, released), shelf.in(PastCaseState.RELEASED, Page.newest(9)));
            assertEquals(
                    List.of("p-3", "p-1", "p-2", "p-4"),
                    shelf.since(0, 9).stream().map(KeptPastCase::id).toList());
            assertEquals(List.of(refused, brought), shelf.since(released.stamp().auditNumber(), 9));
            assertThrows(OutOfDate.class, () -> shelf.release(BEN, refused, "{}"));
            assertThrows(OutOfDate.class, () -> shelf.rewrite(BEN, released, "{}"));
            assertThrows(OutOfDate.class, () -> shelf.offer(ANNA, "p-2", "{}"));
            assertThrows(OutOfDate.class, () -> shelf.bringIn(ANNA, "p-2", "{}"), "what was refused stays out");
            assertThrows(OutOfDate.class, () -> shelf.withdraw(BEN, "p-3"));
            assertThrows(FaultyInput.class, () -> shelf.refuse(BEN, "p-9"));
            assertThrows(FaultyInput.class, () -> shelf.offer(ANNA, "p-9", "{\n}"));
            assertThrows(FaultyInput.class, () -> shelf.release(BEN, third, "{\n}"));
            assertEquals("", shelf.withdraw(BEN, "p-1").line());
            assertEquals(List.of(), store.audit().verify().faults());
        }
    }

    @ParameterizedTest
    @EnumSource
    void aUser_isChangedByOneAtATimeAndLockedAfterFailures(Engine engine) throws SQLException {
        try (Store store = open(engine)) {
            Users users = store.users();
            User anna = users.save(BEN, User.fresh("anna", Set.of(Role.SAFETY_OFFICER, Role.SPECIALIST), "{x}secret"));
            assertEquals(1, anna.version());
            assertEquals(Set.of(Role.SPECIALIST, Role.SAFETY_OFFICER), anna.roles());
            assertFalse(anna.toString().contains("secret"));
            assertThrows(OutOfDate.class, () -> users.save(BEN, User.fresh("anna", Set.of(), "")));
            User demoted = users.save(BEN, anna.with(Set.of()));
            assertEquals(Set.of(), users.find("anna").orElseThrow().roles());
            assertThrows(OutOfDate.class, () -> users.save(BEN, anna.withPasswordHash("y")));

            Duration lock = Duration.ofMinutes(15);
            assertEquals(1, users.signInFailed("anna", 2, lock).failedSignIns());
            User locked = users.signInFailed("anna", 2, lock);
            Instant until = locked.lockedUntil().orElseThrow();
            assertTrue(until.isAfter(SteppingClock.START.plus(lock)), until::toString);
            assertEquals(Optional.empty(), users.signedIn("anna").lockedUntil());
            assertEquals(demoted.version() + 3, users.find("anna").orElseThrow().version());
            assertThrows(FaultyInput.class, () -> users.signedIn("nobody"));
            assertThrows(FaultyInput.class, () -> users.save(BEN, User.fresh("Anna", Set.of(), "")));
            assertEquals(List.of("anna"), users.all().stream().map(User::name).toList());
        }
    }

    @ParameterizedTest
    @EnumSource
    void aKey_isAddedOnceAndWithdrawnButNeverGone(Engine engine) throws SQLException {
        try (Store store = open(engine)) {
            Users users = store.users();
            UserKey key = new UserKey("anna", "k1", "sign-release", "MCowBQYDK2VwAyEA");
            assertThrows(FaultyInput.class, () -> users.addKey(BEN, key));
            users.save(BEN, User.fresh("anna", Set.of(), ""));
            users.addKey(BEN, key);
            assertThrows(OutOfDate.class, () -> users.addKey(BEN, key));
            assertThrows(FaultyInput.class, () -> users.withdrawKey(BEN, "anna", "k2"));
            users.withdrawKey(BEN, "anna", "k1");
            assertEquals(
                    List.of(new UserKey("anna", "k1", "sign-release", "MCowBQYDK2VwAyEA", KeyState.WITHDRAWN)),
                    users.keys("anna"));
            assertEquals(List.of(), store.audit().verify().faults());
        }
    }

    @ParameterizedTest
    @EnumSource
    void whyAKeyEnded_isToldAndMayTurnOutWorse(Engine engine) throws SQLException {
        try (Store store = open(engine)) {
            Users users = store.users();
            users.save(BEN, User.fresh("anna", Set.of(), ""));
            users.addKey(BEN, new UserKey("anna", "k1", "sign-release", "MCowBQYDK2VwAyEA"));
            assertEquals(Optional.empty(), users.everyKey().get(0).end());
            users.withdrawKey(BEN, "anna", "k1", KeyEnd.NO_LONGER_USED);
            KeptKey ended = users.everyKey().get(0);
            assertEquals(Optional.of(KeyEnd.NO_LONGER_USED), ended.end());
            users.withdrawKey(BEN, "anna", "k1", KeyEnd.COMPROMISED);
            KeptKey worse = users.everyKey().get(0);
            assertEquals(Optional.of(KeyEnd.COMPROMISED), worse.end());
            assertEquals(ended.stamp(), worse.stamp(), "it ended when it ended");
            assertThrows(FaultyInput.class, () -> users.withdrawKey(BEN, "anna", "k2", KeyEnd.LOST));
            assertEquals(List.of(), store.audit().verify().faults());
        }
    }

    @ParameterizedTest
    @EnumSource
    void aRelease_isKeptOnceWithItsStepsAndSignaturesInOrder(Engine engine) throws SQLException {
        String digest = "sha256:" + "0".repeat(64);
        try (Store store = open(engine)) {
            ReleaseShelf shelf = store.releases();
            KeptRelease kept = shelf.add(ANNA, "1.0.0", digest, "5:a.txt,2:é\n,");
            shelf.add(ANNA, "1.1.0", digest, "");
            assertEquals(Optional.of(kept), shelf.one("1.0.0"));
            assertEquals(Optional.empty(), shelf.one("2.0.0"));
            assertThrows(OutOfDate.class, () -> shelf.add(BEN, "1.0.0", digest, ""));
            assertThrows(FaultyInput.class, () -> shelf.add(BEN, "next", digest, ""));
            Instant later = SteppingClock.START.plusSeconds(86_400);
            KeptStep built = shelf.step(ANNA, step("1.0.0", Act.RELEASE_BUILT, later));
            KeptStep other = shelf.step(BEN, step("1.1.0", Act.RELEASE_BUILT, later));
            KeptStep sent = shelf.step(BEN, step("1.0.0", Act.RELEASE_SUBMITTED, later));
            assertEquals(List.of(built, other, sent), shelf.steps());
            assertThrows(FaultyInput.class, () -> shelf.step(BEN, step("2.0.0", Act.RELEASE_BUILT, later)));
            KeptSignature first = shelf.sign(ANNA, Act.REPLAY_ACKNOWLEDGED, "1.0.0", "{\"a\":1}");
            KeptSignature second = shelf.sign(BEN, Act.RELEASE_SIGNED, "1.0.0", "{\"a\":1}");
            assertEquals(List.of(first, second), shelf.signatures("1.0.0"));
            assertEquals(List.of(), shelf.signatures("1.1.0"));
            KeptShadowRun run = shelf.shadowRun(BEN, "1.1.0", "1.0.0", "{}");
            assertEquals(List.of(run), shelf.shadowRuns("1.1.0"));
            assertEquals(
                    List.of("shadow-compared", "release-signed", "replay-acknowledged", "release-submitted"),
                    store.audit().newest(Page.newest(4)).stream()
                            .map(AuditRow::act)
                            .toList());
            assertEquals(List.of(), store.audit().verify().faults());
        }
    }

    private static NewStep step(String version, Act act, Instant from) {
        return new NewStep(version, act, from, Optional.of(LocalDate.of(2027, 3, 1)), "é 'why'");
    }

    @ParameterizedTest
    @EnumSource
    void theSameFeedback_isKeptOnce(Engine engine) throws SQLException {
        try (Store store = open(engine)) {
            Actor hook = new Actor("hook:ward-7");
            Instant at = Instant.parse("2026-03-01T09:00:00.123Z");
            HookFeedback accepted = new HookFeedback("plan", "card-1", "accepted", at, "{}");
            assertTrue(store.feedback().keep(hook, accepted));
            assertFalse(store.feedback().keep(hook, accepted));
            assertTrue(store.feedback().keep(hook, new HookFeedback("plan", "card-1", "overridden", at, "{}")));
            List<FeedbackBook.Kept> newest = store.feedback().newest(Page.newest(9));
            assertEquals(2, newest.size());
            assertEquals(accepted, newest.get(1).feedback());
            assertEquals(2, store.audit().head().number());
        }
    }

    @ParameterizedTest
    @EnumSource
    void whatIsFoundOfFeedback_isKeptWordByWordAndNeedsAReport(Engine engine) throws SQLException {
        try (Store store = open(engine)) {
            Instant at = Instant.parse("2026-03-01T09:00:00.123Z");
            store.feedback().keep(new Actor("hook:ward-7"), new HookFeedback("plan", "card-1", "overridden", at, "{}"));
            Judgement first = judgement(at, Judgement.Finding.CANNOT_TELL);
            Judgement second = judgement(at, Judgement.Finding.APPROPRIATE);
            store.feedback().judge(ANNA, first);
            store.feedback().judge(BEN, second);

            List<FeedbackBook.KeptJudgement> found = store.feedback().judgements("card-1", "overridden", at);
            assertEquals(
                    List.of(first, second),
                    found.stream().map(FeedbackBook.KeptJudgement::judgement).toList());
            assertEquals("ben", found.get(1).stamp().by());
            assertEquals(
                    "feedback-judged",
                    store.audit().newest(Page.newest(1)).get(0).act());
            assertThrows(
                    FaultyInput.class,
                    () -> store.feedback().judge(ANNA, judgement(at.plusMillis(1), Judgement.Finding.APPROPRIATE)));
            assertEquals(3, store.audit().head().number(), "what was refused left no row");
        }
    }

    private static Judgement judgement(Instant at, Judgement.Finding found) {
        return new Judgement("card-1", "overridden", at, found, "anna", "é 'why'");
    }

    @ParameterizedTest
    @EnumSource
    void whatACardSpokeOf_isKept(Engine engine) throws SQLException {
        try (Store store = open(engine)) {
            GivenCard about = new GivenCard(
                    "card-1", "plan", "1.0.0", "sha256:abc", "laser-1470", "careful", Set.of("EXC-007", "CAU-002"));
            GivenCard overview = new GivenCard("card-2", "plan", "1.0.0", "sha256:abc", "", "", Set.of());
            store.cards().keep(ANNA, about);
            store.cards().keep(ANNA, overview);
            assertEquals(Optional.of(about), store.cards().one("card-1"));
            assertEquals(Optional.of(overview), store.cards().one("card-2"));
            assertEquals(Optional.empty(), store.cards().one("card-3"));
        }
    }

    @ParameterizedTest
    @EnumSource
    void aChange_isKeptStepByStep(Engine engine) throws SQLException {
        try (Store store = open(engine)) {
            NewChangeStep submitted = new NewChangeStep(
                    "0091", Act.CHANGE_SUBMITTED, "anna", "sha256:d", "sha256:r", "{\"é\":1}", "1:a,1:é,", "");
            NewChangeStep withdrawn =
                    new NewChangeStep("0091", Act.CHANGE_WITHDRAWN, "anna", "", "", "", "", "é 'why'");
            NewChangeStep other =
                    new NewChangeStep("0092", Act.CHANGE_SUBMITTED, "ben", "sha256:e", "sha256:s", "{}", "", "");
            store.changes().step(ANNA, submitted);
            KeptChangeStep second = store.changes().step(ANNA, withdrawn);
            KeptChangeStep third = store.changes().step(BEN, other);

            assertEquals(2, second.step());
            assertEquals(
                    List.of(submitted, withdrawn),
                    store.changes().steps("0091").stream()
                            .map(KeptChangeStep::what)
                            .toList());
            assertEquals(List.of(third, second), store.changes().last());
            assertEquals(List.of(), store.changes().steps("0093"));
        }
    }

    @ParameterizedTest
    @EnumSource
    void documentsOfAllCases_areReadNewestFirst(Engine engine) throws SQLException {
        try (Store store = open(engine)) {
            store.cases().save(ANNA, "c", Cases.NONE, "{}");
            store.cases().save(ANNA, "d", Cases.NONE, "{}");
            KeptDocument first = store.documents().keep(ANNA, advice("c"));
            KeptDocument second = store.documents().keep(ANNA, advice("d"));
            store.documents().keep(ANNA, new NewDocument(DocumentKind.PLAN, "c", 1, ORIGIN, "{}"));
            assertEquals(List.of(second, first), store.documents().newest(DocumentKind.ADVICE, Page.newest(9)));
            assertEquals(
                    List.of(first),
                    store.documents().newest(DocumentKind.ADVICE, Page.newest(9).after(second.stamp())));
        }
    }

    private static NewDocument advice(String caseRef) {
        return new NewDocument(DocumentKind.ADVICE, caseRef, 1, ORIGIN, "{}");
    }

    @ParameterizedTest
    @EnumSource
    void whatIsDoneTogether_isKeptWhollyOrNotAtAll(Engine engine) throws SQLException {
        try (Store store = open(engine)) {
            assertThrows(
                    FaultyInput.class,
                    () -> store.together(() -> {
                        store.cases().save(ANNA, "c", Cases.NONE, "{}");
                        assertTrue(store.cases().latest("c").isPresent(), "a transaction sees what it wrote");
                        return store.documents().keep(ANNA, new NewDocument(DocumentKind.PLAN, "c", 7, ORIGIN, "{}"));
                    }));
            assertEquals(Optional.empty(), store.cases().latest("c"));
            assertEquals(AuditHead.NONE, store.audit().head());

            store.together(() -> {
                store.cases().save(ANNA, "c", Cases.NONE, "{}");
                return store.documents().keep(ANNA, new NewDocument(DocumentKind.PLAN, "c", 1, ORIGIN, "{}"));
            });
            assertEquals(2, store.audit().head().number());
        }
    }

    @ParameterizedTest
    @EnumSource
    void theTrail_tellsOfLookingToo(Engine engine) throws SQLException {
        try (Store store = open(engine)) {
            Subject subject = new Subject("case", "c/1");
            store.cases().save(ANNA, "c", Cases.NONE, "{}");
            store.audit().note(BEN, Act.VIEWED, subject);
            store.audit().note(BEN, Act.SIGNED_OUT, new Subject("user", "ben"));
            assertEquals(
                    List.of("viewed", "case-saved"),
                    store.audit().about(subject, Page.newest(9)).stream()
                            .map(AuditRow::act)
                            .toList());
            assertThrows(IllegalArgumentException.class, () -> new Subject("case", "Jane Doe"));
            assertEquals(List.of(), store.audit().verify().faults());
        }
    }

    private Store open(Engine engine) throws SQLException {
        return Store.open(engine.freshPlace(folder), new SteppingClock());
    }
}
