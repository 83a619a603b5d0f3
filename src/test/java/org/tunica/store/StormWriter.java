package org.tunica.store;

import java.time.Clock;
import java.util.stream.IntStream;

/** Writes as fast as it can, in a process of its own, and says what was acknowledged. Killed, never ended. */
final class StormWriter {
    private static final int THREADS = 2;

    private StormWriter() {}

    /** @param args the place, and a name of this run that no other has */
    public static void main(String[] args) {
        System.out.println("begins");
        Store store = Store.open(args[0], Clock.systemUTC());
        IntStream.range(0, THREADS)
                .mapToObj(thread -> new Thread(() -> write(store, args[1] + "." + thread)))
                .forEach(Thread::start);
    }

    /** Each save of a case brings an advice with it, in one transaction. */
    private static void write(Store store, String ref) {
        Actor by = new Actor("storm");
        String filling = "x".repeat(4_000);
        for (long version = Cases.NONE; ; version++) {
            long seen = version;
            store.together(() -> {
                KeptCase kept =
                        store.cases().save(by, ref, seen, "{\"" + ref + "\":" + seen + ",\"" + filling + "\":0}");
                NewDocument advice =
                        new NewDocument(DocumentKind.ADVICE, ref, kept.version(), new Origin("1", "d", seen), filling);
                return store.documents().keep(by, advice);
            });
            System.out.println(ref + " " + (seen + 1));
        }
    }
}
