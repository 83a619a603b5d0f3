package org.tunica.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.casefile.FaultyInput;

/** Where things are kept beside the data. */
class BesideTest {
    @TempDir
    private Path folder;

    @Test
    void dataInAFolder_haveItBesideThem_andNoOther() {
        String place = folder.resolve("data").toString();
        try (Store store = Store.open(place, new SteppingClock())) {
            assertEquals(Optional.of(Path.of(place)), store.folder());
        }
        FaultyInput refused =
                assertThrows(FaultyInput.class, () -> Store.open(place, folder.resolve("work"), new SteppingClock()));
        assertTrue(refused.getMessage().contains("is kept there"), refused.getMessage());
    }

    @Test
    void aDatabase_hasTheOneThatWasNamed_orNone() throws Exception {
        String place = Engine.POSTGRESQL.freshPlace(folder);
        try (Store store = Store.open(place, new SteppingClock())) {
            assertEquals(Optional.empty(), store.folder());
        }
        try (Store store = Store.open(place, folder.resolve("work"), new SteppingClock())) {
            assertEquals(Optional.of(folder.resolve("work").toAbsolutePath()), store.folder());
        }
    }
}
