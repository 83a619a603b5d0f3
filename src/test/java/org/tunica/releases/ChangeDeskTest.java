package org.tunica.releases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.proposal.Author;
import org.tunica.proposal.CheckedChange;
import org.tunica.store.AuditRow;
import org.tunica.store.Page;
import org.tunica.store.Role;
import org.tunica.store.User;

/** Who hands in what, and what keeps a change from being handed in. */
class ChangeDeskTest {
    @TempDir
    private Path folder;

    private Office office;
    private ChangeDesk desk;
    private Author anna;

    @BeforeEach
    void open() throws IOException {
        office = Office.staffed(folder.resolve("data").toString());
        office.store.users().save(Office.BY, User.fresh("anna", Set.of(Role.RULE_AUTHOR), ""));
        desk = new ChangeDesk(office.store, office.engines);
        anna = Author.at(folder.resolve("copy"));
    }

    @AfterEach
    void close() {
        office.close();
    }

    @Test
    void aChange_isHandedInTakenBackAndHandedInAgain() {
        CheckedChange checked = anna.widensTheGap().checked();
        HandedIn first = desk.submit(Office.BY, anna.copy(), checked);
        assertEquals(ChangeState.IN_REVIEW, first.state());
        assertEquals(checked.digest(), first.digest());
        assertEquals(checked, CheckedChange.read("change", first.document()));
        assertEquals(
                Optional.of(checked.toJson()),
                desk.document(anna.number(), anna.copy().after().digest()));
        assertEquals(Optional.empty(), desk.document(anna.number(), "sha256:other"));

        HandedIn back = desk.withdraw(Office.BY, anna.number(), "a better source was found");
        assertEquals(ChangeState.WITHDRAWN, back.state());
        assertRefused("is withdrawn", () -> desk.withdraw(Office.BY, anna.number(), "again"));

        assertEquals(2, desk.submit(Office.BY, anna.copy(), checked).times());
        assertEquals(
                List.of(anna.number()),
                desk.all().stream().map(HandedIn::number).toList());
        assertEquals(
                anna.copy().after().texts(),
                Bundle.of(desk.files(anna.number()).entrySet().stream()
                                .filter(file -> !file.getKey().startsWith("features/"))
                                .collect(Collectors.toMap(file -> file.getKey(), file -> file.getValue())))
                        .texts());
        assertEquals(
                List.of("change-submitted", "change-withdrawn", "change-submitted"),
                office.store.audit().newest(Page.newest(3)).stream()
                        .map(AuditRow::act)
                        .toList());
    }

    @Test
    void aBarredChange_isNotHandedInAndLeavesNoTrace() {
        long before = office.store.audit().head().number();
        assertRefused("nothing differs", () -> desk.submit(Office.BY, anna.copy(), anna.checked()));
        assertEquals(before, office.store.audit().head().number());
        assertRefused("was never handed in", () -> desk.one(anna.number()));
    }

    @Test
    void somebodyWhoDoesNotWriteRules_handsNothingIn() {
        User known = office.store.users().find("anna").orElseThrow();
        office.store.users().save(Office.BY, known.with(Set.of(Role.SPECIALIST)));
        CheckedChange checked = anna.widensTheGap().checked();
        assertRefused("is nobody here who writes rules", () -> desk.submit(Office.BY, anna.copy(), checked));
    }

    @Test
    void whatWasEditedSinceItWasChecked_isNotHandedIn() {
        CheckedChange checked = anna.widensTheGap().checked();
        anna.edits(Author.DISTANCES, "value: 6\n", "value: 7\n");
        assertRefused("was edited since it was checked", () -> desk.submit(Office.BY, anna.copy(), checked));
    }

    @Test
    void whenAnotherReleaseCameIntoForce_theChangeIsBegunAnew() {
        CheckedChange checked = anna.widensTheGap().checked();
        office.inForce("1.0.0", Office.WIDER_GAP);
        assertRefused(
                "began with the program's own rules; release 1.0.0 is in force now",
                () -> desk.submit(Office.BY, anna.copy(), checked));
        assertEquals(Office.WIDER_GAP.digest(), desk.start().bundle().digest());
        assertEquals("1.0.0", desk.start().release());
    }

    private static void assertRefused(String says, Executable act) {
        FaultyInput refused = assertThrows(FaultyInput.class, act);
        assertTrue(refused.getMessage().contains(says), refused.getMessage());
    }
}
