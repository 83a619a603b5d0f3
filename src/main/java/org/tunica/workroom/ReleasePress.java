package org.tunica.workroom;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.governance.ReleaseBuilder;
import org.tunica.governance.ReleaseFiles;
import org.tunica.governance.ReleaseIntent;
import org.tunica.governance.ReplayReport;
import org.tunica.knowledge.Bundle;
import org.tunica.releases.ChangeDesk;
import org.tunica.releases.Contents;
import org.tunica.releases.HandedIn;
import org.tunica.releases.Program;

/** Makes releases. Nothing is kept yet: {@link org.tunica.releases.ReleaseDesk#keep} does that. */
public final class ReleasePress {
    private static final String FEATURES = "features/";

    private final ChangeDesk desk;
    private final Reviews reviews;
    private final Program program;
    private final Clock clock;

    /** A press for a program. */
    public ReleasePress(ChangeDesk desk, Reviews reviews, Program program, Clock clock) {
        this.desk = desk;
        this.reviews = reviews;
        this.program = program;
        this.clock = clock;
    }

    /**
     * A release of a change as it was handed in.
     *
     * @throws FaultyInput with everything that must be mended first
     */
    public ReleaseFiles ofChange(ReleaseIntent intent, String number, ReplayReport replay) {
        SortedMap<String, String> files = desk.files(number);
        Map<String, String> speaking = new TreeMap<>(files);
        speaking.keySet().removeIf(path -> path.startsWith(FEATURES));
        Map<String, String> scenarios = new TreeMap<>(files);
        scenarios.keySet().removeIf(path -> !path.startsWith(FEATURES));
        Bundle bundle = Bundle.of(speaking);
        if (scenarios.isEmpty()) {
            return of(intent, bundle, Optional.empty(), replay);
        }
        try (Passing passing = Passing.with(scenarios)) {
            return of(intent, bundle, Optional.of(passing.folder().resolve(FEATURES)), replay);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * A release of rules and knowledge.
     *
     * @param features the folder of its scenarios
     * @throws FaultyInput with everything that must be mended first; also when they are not the program's own and a change
     *     was not handed in with exactly these, or its author is not named
     */
    public ReleaseFiles of(ReleaseIntent intent, Bundle bundle, Optional<Path> features, ReplayReport replay) {
        handedIn(intent, bundle);
        LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
        try {
            SortedMap<String, String> pages = Contents.of(reviews.loaded(bundle), features, today);
            for (String change : intent.changes()) {
                desk.document(change, bundle.digest())
                        .ifPresent(document -> pages.put("checks/" + change + ".json", document));
            }
            return new ReleaseBuilder(program.version(), today)
                    .build(intent, bundle, new ReleaseBuilder.Beside(replay, pages, program.parts()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The first release holds what came with the program; whatever differs from that was proposed, checked and handed in. */
    private void handedIn(ReleaseIntent intent, Bundle bundle) {
        if (bundle.digest().equals(Bundle.shipped().digest())) {
            return;
        }
        Faults faults = new Faults();
        List<HandedIn> known = desk.all();
        for (String change : intent.changes()) {
            if (desk.document(change, bundle.digest()).isEmpty()) {
                faults.add(
                        "change " + change,
                        "was not handed in with exactly these rules; hand it in as it is now, first");
            }
            known.stream()
                    .filter(one -> one.number().equals(change))
                    .filter(one -> !intent.authors().contains(one.author()))
                    .forEach(one ->
                            faults.add("authors", "must name " + one.author() + ", who handed in change " + change));
        }
        faults.throwIfAny("release " + intent.version());
    }

    /** A folder that is gone when its work is done. */
    private record Passing(Path folder) implements AutoCloseable {
        static Passing with(Map<String, String> texts) throws IOException {
            Path folder = Files.createTempDirectory("tunica-press");
            for (Map.Entry<String, String> text : texts.entrySet()) {
                Path file = folder.resolve(text.getKey());
                Files.createDirectories(file.getParent());
                Files.writeString(file, text.getValue());
            }
            return new Passing(folder);
        }

        @Override
        public void close() throws IOException {
            try (Stream<Path> found = Files.walk(folder)) {
                for (Path path : found.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }
}
