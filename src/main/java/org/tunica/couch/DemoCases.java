package org.tunica.couch;

import java.nio.charset.StandardCharsets;
import org.tunica.Tunica;
import org.tunica.knowledge.DemoFiles;
import org.tunica.store.Actor;
import org.tunica.store.AuditHead;
import org.tunica.store.Cases;
import org.tunica.store.KeptCase;
import org.tunica.store.Store;

/** The invented cases that come with the program, for whoever wants to see it at work before there is anything to keep. */
public final class DemoCases {
    /** Whoever saved a first version under this name made the case up. */
    private static final Actor INVENTED = new Actor("demo:invented");

    private DemoCases() {}

    /**
     * Puts every invented case into a store in which nothing ever happened; leaves any other as it is.
     *
     * @return how many were put in
     */
    public static int putInto(Store store, Tunica tunica) {
        AuditHead head = store.audit().head();
        if (head.number() > 0) {
            return 0;
        }
        return store.together(() -> {
            int count = 0;
            for (byte[] json : DemoFiles.cases().values()) {
                String text = new String(json, StandardCharsets.UTF_8);
                store.cases().save(INVENTED, tunica.readCase("demo", json).caseRef(), Cases.NONE, text);
                count++;
            }
            return count;
        });
    }

    /** Whether a case was put in here, or made from one that was. */
    public static boolean invented(Cases cases, KeptCase kept) {
        KeptCase first =
                kept.version() == 1 ? kept : cases.version(kept.caseRef(), 1).orElse(kept);
        return first.stamp().by().equals(INVENTED.id());
    }
}
