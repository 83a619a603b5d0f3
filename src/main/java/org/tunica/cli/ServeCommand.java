package org.tunica.cli;

import java.io.PrintWriter;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.tunica.Tunica;
import org.tunica.plan.Advice;
import org.tunica.store.Store;
import org.tunica.web.Listening;
import org.tunica.web.ServerSettings;
import org.tunica.web.WebServer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Answers over HTTP until it is told to stop. */
@Command(name = "serve", description = "Answers over HTTP, on this machine alone.", mixinStandardHelpOptions = true)
final class ServeCommand implements Callable<Integer> {
    @Option(
            names = "--port",
            paramLabel = "PORT",
            description = "Port to listen on; 0 takes a free one (default: 8080).")
    private Optional<Integer> port = Optional.empty();

    @Option(
            names = "--address",
            paramLabel = "ADDRESS",
            description = "Address of this machine; loopback only (default: 127.0.0.1).")
    private Optional<String> address = Optional.empty();

    @Option(
            names = "--data",
            paramLabel = "FOLDER",
            description = "The folder with the data, or a jdbc:postgresql: URL; made when it is not there. Without it"
                    + " nothing outlives the server.")
    private Optional<String> data = Optional.empty();

    @Option(
            names = "--settings",
            paramLabel = "SERVER.yaml",
            description = "What the site says of its server (tunica-server/1).")
    private Optional<String> settingsFile = Optional.empty();

    @Spec
    private CommandSpec spec;

    ServeCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() throws InterruptedException {
        ServerSettings settings = settings();
        Listening listening = settings.listening();
        if (!loopback(listening.address())) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--address: \"" + listening.address() + "\" is no loopback address of this machine");
        }
        Clock clock = Clock.systemUTC();
        PrintWriter out = spec.commandLine().getOut();
        try (ServedData served = ServedData.at(data);
                Store store = Store.open(served.place(), clock);
                WebServer server = WebServer.start(Tunica.shipped(), store, settings, clock)) {
            out.println("Tunica answers at http://" + listening.address() + ":" + server.port() + "/");
            out.println(Advice.CAUTION);
            out.flush();
            new CountDownLatch(1).await();
        }
        return 0;
    }

    private ServerSettings settings() {
        ServerSettings said = settingsFile
                .map(file -> ServerSettings.read(file, InputFile.read(file)))
                .orElseGet(ServerSettings::usual);
        Listening usual = said.listening();
        return said.with(new Listening(address.orElse(usual.address()), port.orElse(usual.port())));
    }

    private static boolean loopback(String address) {
        try {
            return InetAddress.getByName(address).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }
}
