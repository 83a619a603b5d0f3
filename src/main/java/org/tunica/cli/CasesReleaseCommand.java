package org.tunica.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import org.tunica.Tunica;
import org.tunica.casefile.Faults;
import org.tunica.pastcases.PastCase;
import org.tunica.pastcases.WaitingRoom;
import org.tunica.plan.Advice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Releases waiting cases into the base. */
@Command(
        name = "release",
        description = {
            "Release waiting cases into the base: those whose digests you give, all or none.",
            "Who releases them is not kept. A case in too small a crowd is held back and says what it waits for."
        },
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class CasesReleaseCommand implements Callable<Integer> {
    @Mixin
    private CasesFolder folder = new CasesFolder();

    @Option(
            names = "--digest",
            paramLabel = "sha256:...",
            required = true,
            arity = "1..*",
            description = "Digest that cases waiting ID showed under the line; several are released together.")
    private List<String> digests = new ArrayList<>();

    @Spec
    private CommandSpec spec;

    CasesReleaseCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        Tunica tunica = Tunica.shipped();
        WaitingRoom room = folder.room();
        Set<String> asked = new LinkedHashSet<>(digests);
        List<WaitingRoom.Line> seen = room.lines().stream()
                .filter(line -> asked.contains(line.digest()))
                .toList();
        everyDigestIsOfALine(asked, seen);
        List<PastCase> released =
                tunica.pastCases().release(folder.released(tunica)).of(CasesFolder.read(tunica, seen));
        folder.base(tunica).add(released);
        room.remove(asked);
        spec.commandLine()
                .getOut()
                .println(released.size() + (released.size() == 1 ? " case" : " cases") + " released into the base.");
        return 0;
    }

    private static void everyDigestIsOfALine(Set<String> asked, List<WaitingRoom.Line> seen) {
        Faults faults = new Faults();
        Set<String> known = new LinkedHashSet<>();
        seen.forEach(line -> known.add(line.digest()));
        asked.stream()
                .filter(digest -> !known.contains(digest))
                .forEach(digest -> faults.add(
                        "--digest", "no waiting line has one of those given; look again, it may have changed since"));
        faults.throwIfAny("release");
    }
}
