package org.tunica.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.pastcases.CaseBase;
import org.tunica.pastcases.CaseProgress;
import org.tunica.pastcases.EachCase;
import org.tunica.pastcases.WaitingCase;
import org.tunica.pastcases.WaitingRoom;
import picocli.CommandLine.Option;

/** The option that names the folder of a case base. */
final class CasesFolder {
    @Option(
            names = "--cases",
            paramLabel = "FOLDER",
            required = true,
            description = "The folder of the case base; it is made if it is not there.")
    private String folder = "";

    CaseBase base(Tunica tunica) {
        return tunica.pastCases().caseBase(path(folder));
    }

    /** What is in the base; nothing where there is none yet. */
    EachCase released(Tunica tunica) {
        return Files.exists(path(folder).resolve(CaseBase.CASES))
                ? taker -> base(tunica).each(taker, CaseProgress.NONE)
                : EachCase.NONE;
    }

    /** The cases of the base that wait for their release. */
    WaitingRoom room() {
        return new WaitingRoom(path(folder).toAbsolutePath());
    }

    /** The waiting cases of some lines of the room. */
    static List<WaitingCase> read(Tunica tunica, List<WaitingRoom.Line> lines) {
        List<WaitingCase> waiting = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            waiting.add(tunica.pastCases()
                    .readWaitingCase(
                            WaitingRoom.FILE + ", line " + (i + 1),
                            lines.get(i).text().getBytes(StandardCharsets.UTF_8)));
        }
        return waiting;
    }

    String name() {
        return folder;
    }

    static Path path(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new FaultyInput("input", List.of(new Fault(name, "is not a file name here: " + e.getReason())));
        }
    }
}
