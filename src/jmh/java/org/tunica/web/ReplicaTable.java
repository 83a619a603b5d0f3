package org.tunica.web;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.tunica.store.Engine;

/**
 * Prints what one server and what two servers over one PostgreSQL answer, all on this machine and each in a process of its
 * own, asked by 16 clients that ask again as soon as they are answered. On few cores two servers cannot answer more than one:
 * the table shows what sharing costs, not what a second machine brings.
 *
 * <p>Argument: seconds for each row; 10 without.
 */
public final class ReplicaTable {
    private static final int CLIENTS = 16;
    private static final Path DEMO = Path.of("knowledge/demo");

    private ReplicaTable() {}

    /** Prints the table. */
    public static void main(String[] args) throws Exception {
        rows(Duration.ofSeconds(args.length == 0 ? 10 : Integer.parseInt(args[0])));
    }

    /** Prints the table. */
    public static void rows(Duration time) throws Exception {
        String place = Engine.POSTGRESQL.freshPlace(DEMO);
        String advice = Files.readString(DEMO.resolve("straight-thigh-trunk.json"));
        String sign = Files.readString(DEMO.resolve("fhir/order-sign.json"));
        System.out.printf("cores %d, clients %d%n", Runtime.getRuntime().availableProcessors(), CLIENTS);
        System.out.println("servers  asked                                  p50 ms    p95 ms  answers/s  failed");
        try (ServerProcess one = ServerProcess.over(place);
                ServerProcess other = ServerProcess.over(place)) {
            for (List<ServerProcess> servers : List.of(List.of(one), List.of(one, other))) {
                row(servers, "advice, nothing kept", "/api/advice", advice, time);
                row(servers, "hook, each card kept", "/cds-services/vein-closure", sign, time);
            }
        }
    }

    private static void row(List<ServerProcess> servers, String what, String path, String body, Duration time)
            throws Exception {
        ask(servers, path, body, time); // warms up
        List<Clients.Measured> measured = ask(servers, path, body, time);
        System.out.printf(
                Locale.ROOT,
                "%7d  %-36s %8.1f  %8.1f  %9.0f  %6d%n",
                servers.size(),
                what,
                measured.stream().mapToDouble(one -> one.quantileMs(0.5)).max().orElse(0),
                measured.stream().mapToDouble(one -> one.quantileMs(0.95)).max().orElse(0),
                measured.stream().mapToDouble(Clients.Measured::perSecond).sum(),
                measured.stream().mapToInt(Clients.Measured::failed).sum());
    }

    private static List<Clients.Measured> ask(List<ServerProcess> servers, String path, String body, Duration time)
            throws Exception {
        ExecutorService crowd = Executors.newFixedThreadPool(servers.size());
        try {
            List<Future<Clients.Measured>> asked = new ArrayList<>();
            for (ServerProcess server : servers) {
                Clients clients = new Clients(server.port(), path, () -> body);
                asked.add(crowd.submit(() -> clients.run(CLIENTS / servers.size(), time)));
            }
            List<Clients.Measured> measured = new ArrayList<>();
            for (Future<Clients.Measured> one : asked) {
                measured.add(one.get());
            }
            return measured;
        } finally {
            crowd.shutdownNow();
        }
    }
}
