package org.tunica.features;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tunica.CaseTree;
import org.tunica.Tunica;
import org.tunica.rules.Answer;

/** The state of one scenario: a case under change, the technique considered, and what was claimed of them. */
public final class Clinic {
    static final Tunica TUNICA = Tunica.shipped();
    private static final Engine SHIPPED = Engine.of(TUNICA);

    private CaseTree tree = CaseTree.soundLeg();
    private String technique = "";
    private final Map<String, Answer> foreseen = new TreeMap<>();
    private final List<Claimed> claims = new ArrayList<>();

    void sees(CaseTree newTree) {
        tree = newTree;
    }

    void foresees(String field, Answer answer) {
        foreseen.put(field, answer);
    }

    /** The case as it stands now. */
    public CaseTree tree() {
        return tree;
    }

    void considers(String newTechnique) {
        TUNICA.knowledge().technique(newTechnique);
        technique = newTechnique;
    }

    /** Checks a claim against the rules shipped and keeps it. */
    void claim(Claim claim) {
        Scene scene = new Scene(TUNICA, tree, technique, foreseen);
        claims.add(new Claimed(scene, claim));
        claim.check(scene, SHIPPED);
    }

    /** Every claim so far, in order. */
    public List<Claimed> claims() {
        return List.copyOf(claims);
    }

    /** A claim and the scene it is about. */
    public record Claimed(Scene scene, Claim claim) {
        /**
         * Holds the claim against other rules.
         *
         * @throws AssertionError when it does not hold
         */
        public void check(Engine engine) {
            claim.check(scene, engine);
        }
    }
}
