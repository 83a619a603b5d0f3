package org.tunica.treatment;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.tunica.CaseTree;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.session.SessionPlan;

/** Invented records of deliveries beside the demo cases, which tests change field by field. */
public final class Delivered {
    public static final Tunica TUNICA = Tunica.shipped();
    public static final List<String> DEMOS =
            List.of("straight-thigh-trunk", "both-legs-many-segments", "large-trunk-anticoagulated");

    private static final Map<String, SessionPlan> PLANS = new ConcurrentHashMap<>();

    private Delivered() {}

    /** The record beside a demo case. */
    public static CaseTree demo(String name) {
        try {
            return CaseTree.of(Files.readAllBytes(Path.of("knowledge/demo/delivered/" + name + ".json")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The plan of a demo case as it comes back from JSON. */
    public static SessionPlan plan(String name) {
        return PLANS.computeIfAbsent(name, Delivered::planned);
    }

    private static SessionPlan planned(String name) {
        CaseTree tree = CaseTree.demo(name);
        if (name.equals("straight-thigh-trunk")) {
            // what was done is the operator's choice: segmental radiofrequency is even on points and goes before it
            tree.set("limbs.0.segments.0.chosen", "laser-1470-radial");
        }
        SessionPlan plan = TUNICA.plan(TUNICA.readCase("case", tree.bytes()));
        return TUNICA.readPlan("plan", TUNICA.toJson(plan).getBytes(StandardCharsets.UTF_8));
    }

    public static DeliveredSession read(CaseTree tree) {
        return TUNICA.treatments().readDelivered("delivered", tree.bytes());
    }

    /** The note of a changed record of a demo case. */
    public static ProcedureNote note(String name, CaseTree tree) {
        return TUNICA.treatments().note(plan(name), read(tree));
    }

    /** Every fault of a record, as place and words. */
    public static List<String> faults(CaseTree tree) {
        try {
            read(tree);
            return List.of();
        } catch (FaultyInput e) {
            return e.faults().stream().map(Fault::toString).toList();
        }
    }
}
