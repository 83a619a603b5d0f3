package org.tunica.pastcases;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes the lines of a base over as they are: they were judged when they came in. Only their ids are read. */
final class OldLines {
    private static final int BEGINNING_BYTES = 200;
    private static final Pattern ID = Pattern.compile("\"id\"\\s*:\\s*\"(" + PastCase.ID + ")\"");

    private OldLines() {}

    static long copy(CaseFileSource old, NewBase next, IdSet ids, Path file) throws IOException {
        LineFaults faults = new LineFaults();
        LineReader lines = new LineReader(old.in());
        long count = 0;
        for (Optional<LineReader.Line> line = lines.next(); line.isPresent(); line = lines.next()) {
            String beginning = new String(
                    line.get().bytes(),
                    0,
                    Math.min(BEGINNING_BYTES, line.get().bytes().length),
                    StandardCharsets.UTF_8);
            Matcher id = ID.matcher(beginning);
            if (!id.find() || !ids.add(id.group(1)) || !line.get().ended()) {
                faults.add(line.get().number(), "is damaged; check the base before anything is added to it");
                break;
            }
            next.line(line.get().bytes());
            count++;
        }
        faults.throwIfAny(file.toString());
        return count;
    }
}
