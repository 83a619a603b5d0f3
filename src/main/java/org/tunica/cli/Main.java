package org.tunica.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.tunica.casefile.FaultyInput;
import org.tunica.cluster.EngineUnavailable;
import org.tunica.plan.Advice;
import org.tunica.store.OutOfDate;
import org.tunica.store.StoreUnavailable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;

/** Starts the program. */
@Command(
        name = "tunica",
        description = "Decision support for the specialist who closes incompetent leg veins.",
        footer = {"", Advice.CAUTION},
        footerHeading = "%n",
        subcommands = {
            AdviseCommand.class,
            WindowCommand.class,
            CalibrateCommand.class,
            PlanCommand.class,
            FollowUpCommand.class,
            SimilarCommand.class,
            IndexCommand.class,
            SheetCommand.class,
            NoteCommand.class,
            CasesCommand.class,
            AuditCommand.class,
            ReplayCommand.class,
            RulesCommand.class,
            FhirCommand.class,
            HookCommand.class,
            SchemaCommand.class,
            ChangeCommand.class,
            WatchCommand.class,
            FeedbackCommand.class,
            ReleaseCommand.class,
            KeyCommand.class,
            PeopleCommand.class,
            VerifyCommand.class,
            BackupCommand.class,
            RestoreCommand.class,
            ServeCommand.class,
            CommandLine.HelpCommand.class
        },
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
public final class Main {
    private Main() {}

    /** Runs the program and ends it with its exit code. */
    public static void main(String[] args) {
        logOnlyWhenServing(args);
        System.exit(run(args, utf8(System.out), utf8(System.err)));
    }

    /** Libraries log through one door; a command has nothing to say there, a server has, and each start pays for one alone. */
    private static void logOnlyWhenServing(String[] args) {
        boolean serves = args.length > 0 && args[0].equals("serve");
        System.setProperty("slf4j.internal.verbosity", "WARN");
        System.setProperty(
                "slf4j.provider",
                serves ? "ch.qos.logback.classic.spi.LogbackServiceProvider" : "org.slf4j.nop.NOPServiceProvider");
        if (serves && System.getProperty("logging.config") == null) {
            // for what is opened before the framework of the server, and for that framework
            System.setProperty("logback.configurationFile", "web/logback.xml");
            System.setProperty("logging.config", "classpath:web/logback.xml");
        }
    }

    /** JSON is UTF-8 whatever the locale. */
    private static PrintWriter utf8(PrintStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }

    /**
     * Runs one command.
     *
     * @return 0 done, 2 faulty input or wrong usage, 1 anything else
     */
    static int run(String[] args, PrintWriter out, PrintWriter err) {
        CommandLine commandLine = new CommandLine(new Main());
        commandLine.setOut(out);
        commandLine.setErr(err);
        commandLine.setCaseInsensitiveEnumValuesAllowed(true);
        commandLine.setExecutionExceptionHandler((exception, line, parsed) -> report(exception, line.getErr()));
        int code = commandLine.execute(args.length == 0 ? new String[] {"help"} : args);
        // a full disk or a closed pipe shows only here: a writer does not throw
        if (out.checkError() && code == ExitCode.OK) {
            err.println("The output could not be written.");
            code = ExitCode.SOFTWARE;
        }
        err.flush();
        return code;
    }

    private static int report(Exception exception, PrintWriter err) {
        if (exception instanceof FaultyInput) {
            err.println(exception.getMessage());
            return ExitCode.USAGE;
        }
        if (exception instanceof OutOfDate) {
            err.println(exception.getMessage());
            return ExitCode.USAGE;
        }
        if (exception instanceof StoreUnavailable || exception instanceof EngineUnavailable) {
            err.println(exception.getMessage());
            return ExitCode.SOFTWARE;
        }
        err.println("The program failed: " + exception);
        return ExitCode.SOFTWARE;
    }

    /** The version from the jar's manifest. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = Main.class.getPackage().getImplementationVersion();
            return new String[] {"tunica " + (version == null ? "(built from source)" : version)};
        }
    }
}
