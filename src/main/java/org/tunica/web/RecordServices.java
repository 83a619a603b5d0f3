package org.tunica.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.fhir.Capabilities;
import org.tunica.fhir.HookService;
import org.tunica.fhir.RecordService;
import org.tunica.fhir.Site;

/**
 * What is offered to record systems.
 *
 * @param hooks answers calls; empty where the site has not said what its room holds
 * @param records answers operations on records; empty likewise
 * @param capabilities what is there
 */
record RecordServices(Optional<HookService> hooks, Optional<RecordService> records, Capabilities capabilities) {
    /** @throws FaultyInput when the file of the site cannot be read or is faulty */
    static RecordServices of(Tunica tunica, RecordSystems settings, AdviceInTime advice) {
        Optional<Site> site = site(tunica, settings);
        return new RecordServices(
                site.map(known -> new HookService(tunica, known, advice.within(settings.answerWithin()))),
                site.map(known -> new RecordService(tunica, known, advice.within(settings.recordWithin()))),
                new Capabilities(settings.baseAddress() + "/fhir"));
    }

    /** What the site says of itself, if it says anything. */
    static Optional<Site> site(Tunica tunica, RecordSystems settings) {
        return settings.site().map(file -> Site.read(file, bytes(file), tunica));
    }

    private static byte[] bytes(String file) {
        Path path = Path.of(file);
        if (!Files.isRegularFile(path)) {
            throw new FaultyInput("settings", List.of(new Fault("recordSystems.site", "there is no file " + file)));
        }
        try {
            return Files.readAllBytes(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
