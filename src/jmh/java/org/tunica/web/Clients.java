package org.tunica.web;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;

/** Clients that each ask again as soon as they are answered. */
final class Clients {
    private static final double NANOS_PER_MS = 1e6;
    private static final int OK = 200;

    private final URI address;
    private final Supplier<String> bodies;

    Clients(int port, String path, Supplier<String> bodies) {
        this.address = URI.create("http://127.0.0.1:" + port + path);
        this.bodies = bodies;
    }

    /** What all clients saw. */
    record Measured(long[] nanos, int whole, int failed, double seconds) {
        double quantileMs(double share) {
            return nanos[(int) Math.min(nanos.length - 1, share * nanos.length)] / NANOS_PER_MS;
        }

        double perSecond() {
            return nanos.length / seconds;
        }

        double wholeShare() {
            return (double) whole / nanos.length;
        }
    }

    /** One client's answers. */
    private static final class Asking extends Thread {
        private final Clients clients;
        private final long until;
        private final List<Long> nanos = new ArrayList<>();
        private int whole;
        private int failed;

        Asking(Clients clients, long until) {
            this.clients = clients;
            this.until = until;
        }

        @Override
        public void run() {
            HttpClient client =
                    HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
            do {
                ask(client);
            } while (System.nanoTime() < until);
        }

        private void ask(HttpClient client) {
            HttpRequest request = HttpRequest.newBuilder(clients.address)
                    .header("Content-Type", "application/json")
                    .POST(HttpRequest.BodyPublishers.ofString(clients.bodies.get()))
                    .build();
            long start = System.nanoTime();
            try {
                HttpResponse<String> answer = client.send(request, HttpResponse.BodyHandlers.ofString());
                nanos.add(System.nanoTime() - start);
                failed += answer.statusCode() == OK ? 0 : 1;
                whole += answer.statusCode() == OK && !answer.body().contains("\"computed\":\"in-part\"") ? 1 : 0;
            } catch (IOException | InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    /** Asks for a time with so many clients; without any time each asks once. */
    Measured run(int clients, Duration time) throws InterruptedException {
        long start = System.nanoTime();
        List<Asking> all = new ArrayList<>();
        for (int i = 0; i < clients; i++) {
            all.add(new Asking(this, start + time.toNanos()));
        }
        all.forEach(Thread::start);
        for (Asking one : all) {
            one.join();
        }
        double seconds = (System.nanoTime() - start) / 1e9;
        long[] nanos = all.stream()
                .flatMap(one -> one.nanos.stream())
                .mapToLong(Long::longValue)
                .toArray();
        Arrays.sort(nanos);
        int whole = all.stream().mapToInt(one -> one.whole).sum();
        int failed = all.stream().mapToInt(one -> one.failed).sum();
        return new Measured(nanos, whole, failed, seconds);
    }
}
