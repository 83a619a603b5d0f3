package org.tunica.cli;

import org.tunica.plan.Advice;
import picocli.CommandLine.Command;

/** The base of past cases: what gets in, who looked at it, and how well nobody can be found in it. */
@Command(
        name = "cases",
        description = "Keep past cases without the people: anonymise, look at, release, import, export, check, report.",
        footer = {"", Advice.CAUTION},
        subcommands = {
            CasesRetainCommand.class,
            CasesWaitingCommand.class,
            CasesCoarsenCommand.class,
            CasesReleaseCommand.class,
            CasesReportCommand.class,
            CasesInventCommand.class,
            CasesImportCommand.class,
            CasesExportCommand.class,
            CasesCheckCommand.class
        },
        mixinStandardHelpOptions = true)
final class CasesCommand {}
