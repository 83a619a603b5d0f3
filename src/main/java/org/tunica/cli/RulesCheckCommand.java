package org.tunica.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.tunica.Tunica;
import org.tunica.review.Probe;
import org.tunica.review.Remark;
import org.tunica.review.RuleReview;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks the rules of a folder. */
@Command(
        name = "check",
        description = {
            "Read the rules and the knowledge of a folder or archive whole, list every fault, and say what a person should"
                    + " judge: rules that contradict or repeat each other, gaps, overlaps, rules no scenario shows.",
            "Nothing is run but the rules themselves, and nothing is changed."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:no fault", "2:at least one fault"},
        mixinStandardHelpOptions = true)
final class RulesCheckCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "DIR",
            description = "A folder or .zip that holds rules/ and knowledge/, perhaps features/.")
    private String folder = "";

    @Option(names = "--all", description = "Also list the ranges that leave neither gap nor overlap.")
    private boolean all;

    @Mixin
    private TextWidth width = new TextWidth();

    @Spec
    private CommandSpec spec;

    RulesCheckCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        width.check();
        RuleFolder rules = RuleFolder.of(folder);
        Tunica tunica = Tunica.of(rules.bundle());
        RuleReview review = tunica.review();
        List<Remark> remarks = new ArrayList<>(review.remarks().stream()
                .filter(remark -> all || remark.kind() != Remark.Kind.RANGES)
                .toList());
        rules.features().ifPresent(features -> remarks.addAll(rules.reading(() -> review.unshown(features))));
        List<Probe.Outcome> wrong = review.probed().stream()
                .filter(outcome -> !outcome.asExpected())
                .toList();
        print(tunica, remarks, wrong, rules.features().isPresent());
        return wrong.isEmpty() && remarks.stream().noneMatch(Remark::fault) ? ExitCode.OK : ExitCode.USAGE;
    }

    private void print(Tunica tunica, List<Remark> remarks, List<Probe.Outcome> wrong, boolean scenarios) {
        StringBuilder out = new StringBuilder();
        Map<String, List<Remark>> byHeading = new LinkedHashMap<>();
        remarks.forEach(remark -> byHeading
                .computeIfAbsent(heading(remark), heading -> new ArrayList<>())
                .add(remark));
        byHeading.forEach((heading, some) -> {
            out.append(Wrap.paragraph(width.columns(), 0, heading + " (" + some.size() + "):"));
            some.forEach(remark -> out.append(Wrap.paragraph(
                    width.columns(),
                    2,
                    String.join(", ", remark.places()) + ": " + remark.sentence()
                            + remark.accepted()
                                    .map(why -> "; accepted because " + why)
                                    .orElse(""))));
            out.append('\n');
        });
        wrong.forEach(
                outcome -> out.append(Wrap.paragraph(width.columns(), 0, "FAULT, a probe went wrong: " + outcome)));
        long faults = remarks.stream().filter(Remark::fault).count() + wrong.size();
        out.append(Wrap.paragraph(
                width.columns(),
                0,
                tunica.rules().rules().size() + " rules: " + faults + " faults, "
                        + remarks.stream().filter(Remark::open).count()
                        + " remarks to judge, "
                        + remarks.stream()
                                .filter(remark -> remark.accepted().isPresent())
                                .count()
                        + " accepted. " + tunica.review().probes().size()
                        + " probes at the boundaries of the rules were run."
                        + (scenarios ? "" : " No features/ beside the rules: scenarios were not looked at.")));
        spec.commandLine().getOut().print(out);
    }

    private static String heading(Remark remark) {
        if (remark.fault()) {
            return "FAULT, " + remark.kind().words();
        }
        if (remark.open()) {
            return "To judge, " + remark.kind().words();
        }
        return (remark.accepted().isPresent() ? "Accepted, " : "To read, ")
                + remark.kind().words();
    }
}
