package org.tunica.releases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.casefile.FaultyInput;
import org.tunica.governance.ReleaseIntent;
import org.tunica.governance.ReplayReport;
import org.tunica.governance.SemanticVersion;
import org.tunica.proposal.Author;
import org.tunica.store.Role;
import org.tunica.store.User;
import org.tunica.workroom.ReleasePress;
import org.tunica.workroom.Reviews;

/** What no release is made of. */
class ReleasePressTest {
    private static final ReplayReport NONE = new ReplayReport("{}");

    @TempDir
    private Path folder;

    @Test
    void rulesThatNobodyHandedIn_orWhoseAuthorIsNotNamed_areNotBuiltIn() throws Exception {
        try (Office office = Office.staffed(folder.resolve("data").toString())) {
            office.store.users().save(Office.BY, User.fresh("anna", java.util.Set.of(Role.RULE_AUTHOR), ""));
            ChangeDesk desk = new ChangeDesk(office.store, office.engines);
            ReleasePress press = new ReleasePress(desk, new Reviews(), Office.PROGRAM, office.clock);
            assertEquals(
                    List.of("change 0003: was not handed in with exactly these rules; hand it in as it is now, first"),
                    refused(() -> press.of(intent("alma", "0003"), Office.WIDER_GAP, Optional.empty(), NONE)));

            Author anna = Author.at(folder.resolve("copy")).widensTheGap();
            desk.submit(Office.BY, anna.copy(), anna.checked());
            assertEquals(
                    List.of("authors: must name anna, who handed in change " + anna.number()),
                    refused(() -> press.ofChange(intent("alma", anna.number()), anna.number(), NONE)));
            anna.edits(Author.DISTANCES, "value: 6\n", "value: 7\n");
            assertEquals(
                    List.of("change " + anna.number()
                            + ": was not handed in with exactly these rules; hand it in as it is now, first"),
                    refused(() ->
                            press.of(intent("anna", anna.number()), anna.copy().after(), Optional.empty(), NONE)));
        }
    }

    private static ReleaseIntent intent(String author, String change) {
        return new ReleaseIntent(
                SemanticVersion.of("1.0.0"),
                "a wider gap",
                List.of(author),
                List.of(change),
                Optional.empty(),
                Optional.empty(),
                LocalDate.of(2099, 1, 1));
    }

    private static List<String> refused(Runnable act) {
        return assertThrows(FaultyInput.class, act::run).faults().stream()
                .map(Object::toString)
                .toList();
    }
}
