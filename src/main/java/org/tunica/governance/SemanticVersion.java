package org.tunica.governance;

import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/**
 * The number of a release: major when somebody would get another recommendation, minor when something was added, patch when
 * only words changed.
 */
public record SemanticVersion(int major, int minor, int patch) implements Comparable<SemanticVersion> {
    private static final Pattern WRITTEN = Pattern.compile("(0|[1-9]\\d{0,5})\\.(0|[1-9]\\d{0,5})\\.(0|[1-9]\\d{0,5})");

    private static final Comparator<SemanticVersion> ORDER = Comparator.comparingInt(SemanticVersion::major)
            .thenComparingInt(SemanticVersion::minor)
            .thenComparingInt(SemanticVersion::patch);

    /**
     * Reads a version.
     *
     * @throws FaultyInput when it is none
     */
    public static SemanticVersion of(String written) {
        Matcher matcher = WRITTEN.matcher(written);
        if (!matcher.matches()) {
            throw new FaultyInput(
                    "release",
                    List.of(new Fault("version " + written, "must be three numbers with dots, such as 1.4.0")));
        }
        return new SemanticVersion(number(matcher, 1), number(matcher, 2), number(matcher, 3));
    }

    private static int number(Matcher matcher, int group) {
        return Integer.parseInt(matcher.group(group));
    }

    @Override
    public int compareTo(SemanticVersion other) {
        return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        return major + "." + minor + "." + patch;
    }
}
