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

/** The folder of a base of past cases, as a user named it. */
final class CasesFolder {
    private CasesFolder() {}

    /** @throws FaultyInput when it is no path */
    static Path of(String name) {
        try {
            return Path.of(name).toAbsolutePath();
        } catch (InvalidPathException e) {
            throw new FaultyInput("cases", List.of(new Fault("--cases", "is not a folder name here")));
        }
    }

    /** What is in the base of a folder; nothing where there is none yet. */
    static EachCase released(Tunica tunica, Path folder) {
        return Files.exists(folder.resolve(CaseBase.CASES))
                ? taker -> tunica.caseBase(folder).each(taker, CaseProgress.NONE)
                : EachCase.NONE;
    }

    /** The waiting cases of lines; every faulty line is a fault of the whole. */
    static List<WaitingCase> read(Tunica tunica, List<WaitingRoom.Line> lines) {
        List<WaitingCase> waiting = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            waiting.add(tunica.readWaitingCase(
                    WaitingRoom.FILE + ", line " + (i + 1), lines.get(i).text().getBytes(StandardCharsets.UTF_8)));
        }
        return waiting;
    }
}
