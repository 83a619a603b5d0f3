package org.tunica.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.tunica.Tunica;
import org.tunica.pastcases.Finished;
import org.tunica.plan.Advice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lets a finished case wait without its person. */
@Command(
        name = "retain",
        description =
                "Take the person out of a finished case and let it wait until somebody has looked at it and released it.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class CasesRetainCommand implements Callable<Integer> {
    private static final int FEWEST_FILES = 3;

    @Parameters(
            paramLabel = "PLAN.json DELIVERED.json ... FOLLOWUP.json",
            hideParamSyntax = true,
            arity = FEWEST_FILES + "..*",
            description = "The plan as plan --json wrote it, records of what was delivered, and last what was seen.")
    private List<String> files = List.of();

    @Mixin
    private CasesPlace cases = new CasesPlace();

    @Option(
            names = "--site",
            paramLabel = "SITE",
            required = true,
            description = "Pseudonym of the clinic, such as site-a1; no name.")
    private String site = "";

    @Option(
            names = "--year",
            paramLabel = "YEAR",
            description = "Year of the procedure (default: that of the first day recorded).")
    private Integer year = 0;

    @Option(names = "--note", paramLabel = "TEXT", description = "More in words; clinical words alone stay of it.")
    private List<String> notes = new ArrayList<>();

    @Option(names = "--invented", description = "Nobody was treated like this: a case made up for a demonstration.")
    private boolean invented;

    @Spec
    private CommandSpec spec;

    CasesRetainCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        try (PastCaseHouse house = cases.open(spec.commandLine().getErr())) {
            String id = offered(house);
            spec.commandLine()
                    .getOut()
                    .println("The case waits as " + id
                            + ", a random name. Nothing leads from it back to the person; keep no list that does.\n"
                            + "Look at it with: tunica cases waiting " + id + " " + house.option());
        }
        return 0;
    }

    private String offered(PastCaseHouse house) {
        Tunica tunica = house.tunica();
        int last = files.size() - 1;
        byte[] plan = InputFile.read(files.get(0));
        Finished finished = new Finished(
                tunica.readPlan(files.get(0), plan).caseFile(),
                files.subList(1, last).stream()
                        .map(file -> tunica.treatments().readDelivered(file, InputFile.read(file)))
                        .toList(),
                tunica.treatments().readFollowUp(files.get(last), InputFile.read(files.get(last))),
                year == 0 ? OptionalInt.empty() : OptionalInt.of(year),
                site,
                invented,
                notes);
        return house.offer(finished, tunica.treatments().readTreated(files.get(0), plan));
    }
}
