package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.HttpCookie;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.tunica.CaseTree;
import org.tunica.store.KeptCase;
import org.tunica.store.Store;

/**
 * People who save cases and a record system that calls, at two servers in turn, while one of the servers is killed at some
 * moment. Whatever fails is tried again as a program would: at either server, and looking first whether it was done already.
 */
final class ReplicaStorm {
    private static final int WRITERS = 3;
    private static final int MOST_TRIES = 400;
    private static final int BETWEEN_TRIES_MS = 50;
    private static final int LONGEST_QUIET_MS = 1_200;

    private final String place;
    private final List<Replica> replicas;
    private final long seed;
    private final Random random;
    private final AtomicInteger mended = new AtomicInteger();
    private volatile boolean over;
    private int round;

    ReplicaStorm(String place, Replica one, Replica other, long seed) {
        this.place = place;
        this.replicas = List.of(one, other);
        this.seed = seed;
        this.random = new Random(seed);
    }

    /** How many requests failed and went through when they were sent again. */
    int mended() {
        return mended.get();
    }

    void rounds(int count) throws Exception {
        for (round = 1; round <= count; round++) {
            round();
        }
    }

    private void round() throws Exception {
        over = false;
        ExecutorService crowd = Executors.newCachedThreadPool();
        try {
            Browser robin = replicas.get(0).browser();
            robin.signIn("robin", "seven quiet herons");
            HttpCookie session = robin.session().orElseThrow();
            List<Future<Writer>> writers = new ArrayList<>();
            for (int i = 0; i < WRITERS; i++) {
                Writer writer = new Writer("storm-" + seed + "-" + round + "-" + i, session, random.nextLong());
                writers.add(crowd.submit(writer));
            }
            Future<Integer> calls = crowd.submit(this::call);
            Thread.sleep(random.nextInt(LONGEST_QUIET_MS));
            Replica killed = replicas.get(random.nextInt(replicas.size()));
            killed.kill();
            Thread.sleep(random.nextInt(LONGEST_QUIET_MS));
            killed.again();
            Thread.sleep(random.nextInt(LONGEST_QUIET_MS));
            over = true;
            int saved = 0;
            for (Future<Writer> writer : writers) {
                saved += look(writer.get());
            }
            assertTrue(saved > 0 && calls.get() > 0, "nobody did anything");
        } finally {
            over = true;
            crowd.shutdownNow();
        }
    }

    /** Every version that was acknowledged is there once, and no other. */
    private int look(Writer writer) {
        try (Store store = Store.existing(place, Clock.systemUTC())) {
            List<KeptCase> kept = store.cases().history(writer.caseRef);
            assertEquals(writer.saved, kept.stream().map(KeptCase::json).toList());
            assertEquals(List.of(), store.audit().verify().faults());
            return kept.size();
        }
    }

    private Replica either(Random choosing) {
        return replicas.get(choosing.nextInt(replicas.size()));
    }

    /** One token after the other, each shown to both servers at once; at most one may let it in. */
    private int call() throws Exception {
        ExecutorService both = Executors.newFixedThreadPool(replicas.size());
        int letIn = 0;
        try {
            while (!over) {
                String token = Token.sound(Served.BASE + "/cds-services", Instant.now())
                        .signed();
                List<Future<Integer>> answers = new ArrayList<>();
                for (Replica replica : replicas) {
                    answers.add(both.submit(() -> ReplicasTest.called(replica, token)));
                }
                int once = 0;
                for (Future<Integer> answer : answers) {
                    once += answered(answer) == 200 ? 1 : 0;
                }
                assertTrue(once <= 1, "a token was let in twice");
                letIn += once;
            }
            return letIn;
        } finally {
            both.shutdownNow();
        }
    }

    private static int answered(Future<Integer> answer) throws InterruptedException {
        try {
            return answer.get();
        } catch (java.util.concurrent.ExecutionException e) {
            return -1; // the one that was killed
        }
    }

    /** Saves one version of a case after the other. */
    private final class Writer implements Callable<Writer> {
        private final String caseRef;
        private final HttpCookie session;
        private final Random choosing;
        private final List<String> saved = new ArrayList<>();

        Writer(String caseRef, HttpCookie session, long seed) {
            this.caseRef = caseRef;
            this.session = session;
            this.choosing = new Random(seed);
        }

        @Override
        public Writer call() throws Exception {
            while (!over) {
                String json = new String(
                        CaseTree.demo("straight-thigh-trunk")
                                .set("caseRef", caseRef)
                                .set("patient.ageYears", 20 + saved.size() % 60)
                                .bytes(),
                        StandardCharsets.UTF_8);
                save(json);
                saved.add(json);
            }
            return this;
        }

        private void save(String json) throws Exception {
            for (int tries = 1; ; tries++) {
                String why = tried(json);
                if (why.isEmpty()) {
                    mended.addAndGet(tries > 1 ? 1 : 0);
                    return;
                }
                assertTrue(tries < MOST_TRIES, why);
                Thread.sleep(BETWEEN_TRIES_MS);
            }
        }

        /** Why it did not go through; empty when it did, now or with a try that was not answered. */
        private String tried(String json) throws Exception {
            Browser browser = either(choosing).browser();
            browser.carry(session);
            try {
                String[] seen = saved.isEmpty()
                        ? new String[] {"If-None-Match", "*"}
                        : new String[] {"If-Match", "\"" + saved.size() + "\""};
                HttpResponse<String> answer = browser.json("PUT", "/api/cases/" + caseRef, json, seen);
                if (answer.statusCode() == 412) {
                    HttpResponse<String> latest = browser.get("/api/cases/" + caseRef);
                    return latest.body().equals(json) ? "" : "412 " + latest.body();
                }
                return answer.statusCode() < 300 ? "" : answer.statusCode() + " " + answer.body();
            } catch (java.io.IOException e) {
                return e.toString();
            }
        }
    }
}
