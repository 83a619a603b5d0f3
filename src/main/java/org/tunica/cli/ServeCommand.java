package org.tunica.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tunica.Tunica;
import org.tunica.accounts.GivenLink;
import org.tunica.couch.DemoCases;
import org.tunica.plan.Advice;
import org.tunica.store.Store;
import org.tunica.web.Listening;
import org.tunica.web.ServerSettings;
import org.tunica.web.WebServer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Answers over HTTP until it is told to stop. */
@Command(
        name = "serve",
        description = {
            "Answer over HTTP until stopped: pages and JSON for people who sign in, and what record systems ask. The first"
                    + " start prints a link that makes the administrator. It listens to this machine alone unless the"
                    + " settings say how it is protected."
        },
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class ServeCommand implements Callable<Integer> {
    @Option(
            names = "--port",
            paramLabel = "PORT",
            defaultValue = "${env:TUNICA_PORT}",
            description = "Port to listen on; 0 takes a free one (default: TUNICA_PORT of the environment, or 8080).")
    private Optional<Integer> port = Optional.empty();

    @Option(
            names = "--address",
            paramLabel = "ADDRESS",
            defaultValue = "${env:TUNICA_ADDRESS}",
            description =
                    "Address of this machine to listen at (default: TUNICA_ADDRESS, or 127.0.0.1). One that others can reach needs TLS or"
                            + " a trusted proxy in the settings.")
    private Optional<String> address = Optional.empty();

    @Option(
            names = "--data",
            paramLabel = "FOLDER",
            defaultValue = "${env:TUNICA_DATA}",
            description =
                    "The folder with the data, or a jdbc:postgresql: URL (default: TUNICA_DATA); made when it is not there, with invented"
                            + " cases in it. Without it nothing outlives the server, and programs on this machine may ask for"
                            + " advice without signing in.")
    private Optional<String> data = Optional.empty();

    @Option(
            names = "--work",
            paramLabel = "FOLDER",
            description = "Where working copies of rules are kept when the data are in a database; without it changes"
                    + " are made at the command line. Several servers of one database share one.")
    private Optional<Path> work = Optional.empty();

    @Option(names = "--empty", description = "Do not put invented cases into a store that is new.")
    private boolean empty;

    @Option(
            names = "--new-administrator",
            description = "Print a link that makes another administrator, for when none of them can sign in any more.")
    private boolean another;

    @Option(
            names = "--settings",
            paramLabel = "SERVER.yaml",
            defaultValue = "${env:TUNICA_SETTINGS}",
            description = "What the site says of its server, tunica-server/1 (default: TUNICA_SETTINGS).")
    private Optional<String> settingsFile = Optional.empty();

    @Spec
    private CommandSpec spec;

    ServeCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() throws InterruptedException {
        ServerSettings settings = settings();
        settings.checkReach();
        Clock clock = Clock.systemUTC();
        Tunica tunica = Tunica.shipped();
        try (Stopping stopping = Stopping.whenAsked();
                ServedData served = ServedData.at(data);
                Store store = open(served.place(), clock)) {
            int invented = empty ? 0 : DemoCases.putInto(store, tunica);
            new Serving(store, clock, settings)
                    .until(stopping, (server, rules) -> tell(served, invented, server, rules));
        }
        return 0;
    }

    private Store open(String place, Clock clock) {
        return work.map(folder -> Store.open(place, folder, clock)).orElseGet(() -> Store.open(place, clock));
    }

    private void tell(ServedData served, int invented, WebServer server, List<String> rules) {
        PrintWriter out = spec.commandLine().getOut();
        out.println("Tunica answers at " + server.address() + "/");
        out.println(served.says());
        rules.forEach(out::println);
        if (invented > 0) {
            out.println("Invented cases put in, to look around with: " + invented + ". --empty starts without them.");
        }
        if (another) {
            tell(server, server.linkForAnotherAdministrator(), "This link makes another administrator, once");
        } else {
            server.firstLink()
                    .ifPresent(link -> tell(
                            server,
                            link,
                            "Nobody is known here yet. Whoever uses this link becomes the administrator"));
        }
        out.println(Advice.CAUTION);
        out.flush();
    }

    private void tell(WebServer server, GivenLink link, String says) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(says + "; it ends at " + link.until().truncatedTo(ChronoUnit.SECONDS) + ", or with the server:");
        out.println("  " + server.address() + link.path());
    }

    private ServerSettings settings() {
        ServerSettings said = settingsFile
                .map(file -> ServerSettings.read(file, InputFile.read(file)))
                .orElseGet(ServerSettings::usual);
        Listening usual = said.listening();
        ServerSettings settings = said.with(new Listening(address.orElse(usual.address()), port.orElse(usual.port())));
        return data.isEmpty() ? settings.withAdviceForAll() : settings;
    }
}
