package org.tunica.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Prints how long answers over HTTP take: a server in a process of its own, asked over loopback by 1, 8 and 32 clients that
 * each ask again as soon as they are answered. Clients and server share the machine, so on few cores the clients slow the
 * server down.
 *
 * <p>Argument: seconds for each row; 10 without.
 */
public final class HttpTable {
    private static final List<Integer> CLIENTS = List.of(1, 8, 32);
    private static final int PATIENTS = 32;
    private static final Path DEMO = Path.of("knowledge/demo");
    private static final String HOOK = "/cds-services/vein-closure";

    private final ServerProcess server;
    private final Duration time;
    private final AtomicInteger next = new AtomicInteger();

    private HttpTable(ServerProcess server, Duration time) {
        this.server = server;
        this.time = time;
    }

    /** Prints the table. */
    public static void main(String[] args) throws IOException, InterruptedException {
        Duration time = Duration.ofSeconds(args.length == 0 ? 10 : Integer.parseInt(args[0]));
        try (ServerProcess server = ServerProcess.start()) {
            print("ready after %.2f s; idle %.0f MB resident%n", server.readyAfterS(), server.residentMb());
            new HttpTable(server, time).rows();
            print("after load %.0f MB resident%n", server.residentMb());
        }
    }

    private void rows() throws IOException, InterruptedException {
        String advice = read("straight-thigh-trunk.json");
        String many = read("both-legs-many-segments.json");
        String sign = read("fhir/order-sign.json");
        String empty =
                read("fhir/patient-view-without-scan.json").replaceFirst("\"scan\": \"[^\"]*\"", "\"scan\": null");
        wholeOnce(sign);
        row("advice, one segment, wall met before", "/api/advice", () -> advice);
        row("advice, six segments, walls met before", "/api/advice", () -> many);
        row("hook, chart without a scan", HOOK, () -> empty);
        List<String> known =
                IntStream.range(0, PATIENTS).mapToObj(i -> patient(sign, i)).toList();
        for (String patient : known) {
            wholeOnce(patient);
        }
        row("hook, order of a patient asked about before", HOOK, () -> known.get(next.incrementAndGet() % PATIENTS));
        row(
                "hook, order of a new patient, walls met before",
                HOOK,
                () -> patient(sign, PATIENTS + next.incrementAndGet()));
        row("hook, order of a new patient with a new wall", HOOK, () -> wall(sign, next.incrementAndGet()));
    }

    /** Warms up, then measures with each number of clients. */
    private void row(String what, String path, Supplier<String> bodies) throws InterruptedException {
        new Clients(server.port(), path, bodies).run(2, time.dividedBy(2));
        for (int clients : CLIENTS) {
            Clients.Measured measured = new Clients(server.port(), path, bodies).run(clients, time);
            print(
                    "%-48s %2d clients: p50 %6.1f ms, p99 %6.1f ms, %7.1f requests/s, %3.0f %% whole, %d not 200%n",
                    what,
                    clients,
                    measured.quantileMs(0.50),
                    measured.quantileMs(0.99),
                    measured.perSecond(),
                    100 * measured.wholeShare(),
                    measured.failed());
        }
    }

    private void wholeOnce(String call) throws InterruptedException {
        Clients one = new Clients(server.port(), HOOK, () -> call);
        while (one.run(1, Duration.ZERO).wholeShare() < 1) {
            Thread.sleep(100); // the heat of a wall takes seconds
        }
    }

    /** The demo patient with another weight, so that nothing of the advice is remembered but the heat of the walls. */
    private static String patient(String call, int number) {
        return changed(call, "(Observation/weight.*?\"value\": *)[0-9.]+", 50 + number % 40_000 / 1_000.0);
    }

    /** The demo patient with a wall a little thicker than any before. */
    private static String wall(String call, int number) {
        return changed(call, "(\"value\": )410(?=, \"unit\": \"um\")", 410 + number * 0.5 % 300);
    }

    private static String changed(String call, String pattern, double value) {
        String changed = Pattern.compile(pattern, Pattern.DOTALL).matcher(call).replaceFirst("$1" + value);
        if (changed.equals(call)) {
            throw new IllegalStateException("nothing to change: " + pattern);
        }
        return changed;
    }

    private static String read(String name) throws IOException {
        return Files.readString(DEMO.resolve(name));
    }

    private static void print(String format, Object... values) {
        System.out.printf(Locale.ROOT, format, values);
    }
}
