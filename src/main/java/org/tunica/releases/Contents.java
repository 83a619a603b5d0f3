package org.tunica.releases;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tunica.Tunica;
import org.tunica.casefile.Faults;
import org.tunica.review.Remark;
import org.tunica.review.RuleReview;

/** What a release holds beside its rules: the pages people read before they sign, and the scenarios. */
public final class Contents {
    private Contents() {}

    /**
     * The texts by path, after the rules were checked.
     *
     * @param features the folder of the scenarios, if it is at hand
     * @param day the day on which reviews are judged overdue
     * @throws org.tunica.casefile.FaultyInput with every fault the review finds, and every rule that no scenario shows
     * @throws IOException when the scenarios cannot be read
     */
    public static SortedMap<String, String> of(Tunica tunica, Optional<Path> features, LocalDate day)
            throws IOException {
        RuleReview review = tunica.review();
        Faults faults = new Faults();
        review.remarks().stream().filter(Remark::fault).forEach(remark -> note(faults, remark));
        if (features.isPresent()) {
            List<Remark> unshown = review.unshown(features.get());
            unshown.forEach(remark -> note(faults, remark));
        }
        faults.throwIfAny("rules");
        SortedMap<String, String> contents = new TreeMap<>();
        review.pages(features, day).forEach((name, text) -> contents.put("pages/" + name, text));
        if (features.isPresent()) {
            scenarios(features.get(), contents);
        }
        return contents;
    }

    private static void note(Faults faults, Remark remark) {
        faults.add(String.join(", ", remark.places()), remark.sentence());
    }

    private static void scenarios(Path folder, SortedMap<String, String> contents) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".feature")).toList()) {
                String name = folder.relativize(file)
                        .toString()
                        .replace(file.getFileSystem().getSeparator(), "/");
                contents.put("features/" + name, Files.readString(file));
            }
        }
    }
}
