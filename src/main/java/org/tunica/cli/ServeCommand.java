package org.tunica.cli;

import java.io.PrintWriter;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.tunica.Tunica;
import org.tunica.plan.Advice;
import org.tunica.web.WebServer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Answers over HTTP until it is told to stop. */
@Command(name = "serve", description = "Answers over HTTP, on this machine alone.", mixinStandardHelpOptions = true)
final class ServeCommand implements Callable<Integer> {
    @Option(names = "--port", defaultValue = "8080", description = "port to listen on; 0 takes a free one")
    private int port;

    @Option(names = "--address", defaultValue = "127.0.0.1", description = "address of this machine; loopback only")
    private String address = "";

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws InterruptedException {
        if (!loopback(address)) {
            throw new ParameterException(
                    spec.commandLine(), "--address: \"" + address + "\" is no loopback address of this machine");
        }
        PrintWriter out = spec.commandLine().getOut();
        try (WebServer server = WebServer.start(Tunica.shipped(), new WebServer.Listening(address, port))) {
            out.println("Tunica answers at http://" + address + ":" + server.port() + "/");
            out.println(Advice.CAUTION);
            out.flush();
            new CountDownLatch(1).await();
        }
        return 0;
    }

    private static boolean loopback(String address) {
        try {
            return InetAddress.getByName(address).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }
}
