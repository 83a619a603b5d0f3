package org.tunica;

import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.firmness.FirmAdviser;
import org.tunica.governance.VerifiedRelease;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;
import org.tunica.outcomes.Audit;
import org.tunica.outcomes.Auditor;
import org.tunica.paper.Document;
import org.tunica.paper.Paper;
import org.tunica.pastcases.AnonymityLimits;
import org.tunica.pastcases.AnonymityReport;
import org.tunica.physics.Physics;
import org.tunica.plan.Advice;
import org.tunica.plan.AdviceSoFar;
import org.tunica.plan.Explanation;
import org.tunica.plan.Planner;
import org.tunica.review.RuleReview;
import org.tunica.rules.OptionKey;
import org.tunica.rules.RuleBook;
import org.tunica.session.SessionPlan;
import org.tunica.session.SessionPlanner;
import org.tunica.sheet.PatientSheet;
import org.tunica.similar.PastSigns;
import org.tunica.similar.SimilarCases;
import org.tunica.similar.Similarity;
import org.tunica.treatment.NoteWriter;
import org.tunica.treatment.Treatment;

/** Everything a user can ask of a release of rules and knowledge. Immutable and safe for several threads. */
public final class Tunica {
    private static final String DRAFT_VERSION = "0.1.0";

    /** Of the draws by which limits of charts are found; it stands in every audit. */
    private static final long AUDIT_SEED = 1;

    private static @Nullable Tunica shipped;

    private final Bundle bundle;
    private final Knowledge knowledge;
    private final Physics physics;
    private final RuleBook rules;
    private final Planner planner;
    private final FirmAdviser firmness;
    private final SessionPlanner sessions;
    private final Treatments treatments;
    private final PastCases pastCases;
    private final Likeness likeness;
    private final Audits audits;
    private final HeatAnswers heat;
    private final Advice.Release release;
    private final AdviceListener listener;

    private Tunica(Bundle bundle, Advice.Release release, AdviceListener listener) {
        this.bundle = bundle;
        this.knowledge = Knowledge.of(bundle);
        this.physics = accepted(() -> Physics.sharing(knowledge));
        this.rules = RuleBook.of(bundle, knowledge);
        UsedNumbers.check(knowledge, physics, rules);
        accepted(() -> {
            Treatment.check(knowledge);
            Similarity.check(knowledge);
            PastSigns.check(knowledge);
            AnonymityLimits.check(knowledge);
            return knowledge;
        });
        this.planner = accepted(() -> new Planner(knowledge, physics, rules));
        this.sessions = accepted(() -> new SessionPlanner(knowledge, physics));
        this.firmness = accepted(() -> new FirmAdviser(knowledge, physics, rules, planner, sessions::minutes));
        this.release = release;
        this.listener = listener;
        this.treatments = accepted(() -> new Treatments(
                knowledge, new NoteWriter(knowledge, physics.heatGiven()), new PatientSheet(knowledge), this::advise));
        this.pastCases = new PastCases(knowledge, treatments);
        this.likeness = new Likeness(knowledge, physics, pastCases::toLine);
        this.audits = new Audits(accepted(() -> new Auditor(knowledge, AUDIT_SEED)), release);
        this.heat = new HeatAnswers(knowledge, physics, release, this::ranked);
    }

    /**
     * The rules and knowledge shipped with the program, loaded once.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault of its files
     */
    public static synchronized Tunica shipped() {
        if (shipped == null) {
            shipped = of(Bundle.shipped());
        }
        return shipped;
    }

    /**
     * The rules and knowledge of a bundle; nobody signed them, and every output says so.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault of its files
     */
    public static Tunica of(Bundle bundle) {
        return new Tunica(
                bundle,
                new Advice.Release(DRAFT_VERSION, Advice.Release.State.DRAFT, bundle.digest()),
                AdviceListener.NONE);
    }

    /**
     * The rules and knowledge of a release that is in force, or was when an answer was given that is asked for again.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault of its files
     */
    public static Tunica inForce(VerifiedRelease release, AdviceListener listener) {
        Bundle bundle = release.bundle();
        String version = release.manifest().version();
        Advice.Release inForce = new Advice.Release(version, Advice.Release.State.ACTIVE, bundle.digest());
        return new Tunica(bundle, inForce, listener);
    }

    /**
     * Reads a case.
     *
     * @param what the name of the input, for messages
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path
     */
    public CaseFile readCase(String what, byte[] json) {
        return CaseFile.read(what, json, knowledge);
    }

    /** The advice for a case: every option of every technique for every segment, with reasons. */
    public Advice advise(CaseFile caseFile) {
        Advice advice = firmness.firm(caseFile, ranked(caseFile));
        listener.given(caseFile, advice);
        return advice;
    }

    private Advice ranked(CaseFile caseFile) {
        return planner.advise(caseFile, release);
    }

    /** As much of the same advice as takes no computing of heat; {@link #advise} finds the rest, which is known from then on. */
    public AdviceSoFar adviseSoFar(CaseFile caseFile) {
        return planner.adviseSoFar(caseFile, release);
    }

    /**
     * The same advice, with the changes that would turn a ranking held against the whole engine; it seeks heat settings for
     * what nobody measured, which may take a minute a segment.
     */
    public Advice adviseConfirmed(CaseFile caseFile) {
        return firmness.confirmed(caseFile, advise(caseFile));
    }

    /** One plan for every segment of a case under what its sessions share. */
    public SessionPlan plan(CaseFile caseFile) {
        return sessions.plan(caseFile, ranked(caseFile));
    }

    /**
     * Reads a plan that was written as JSON.
     *
     * @param what the name of the input, for messages
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path
     */
    public SessionPlan readPlan(String what, byte[] json) {
        return SessionPlan.read(what, json, knowledge);
    }

    /** A document as XHTML that stands alone. */
    public String toHtml(Document document) {
        return Paper.xhtml(document);
    }

    /** A document as PDF; the same document gives the same bytes. */
    public byte[] toPdf(Document document) {
        return Paper.pdf(document);
    }

    /** A plan as JSON, {@code tunica-plan/1}; the same plan gives the same bytes. */
    public String toJson(SessionPlan plan) {
        return JsonOutput.of(plan);
    }

    /** A report on anonymity as JSON, {@code tunica-anonymity/1}. */
    public String toJson(AnonymityReport report) {
        return JsonOutput.of(report);
    }

    /** Past segments like those of a case as JSON, {@code tunica-similar/1}. */
    public String toJson(SimilarCases similar) {
        return JsonOutput.of(similar);
    }

    /** An audit as JSON, {@code tunica-audit/1}. */
    public String toJson(Audit audit) {
        return JsonOutput.of(audit);
    }

    /** A treatment as JSON, {@code tunica-treatment/1}. */
    public String toJson(Treatment treatment) {
        return JsonOutput.of(treatment);
    }

    /**
     * Why a technique stands as it does for a segment: every rule, whether it spoke or not.
     *
     * @throws org.tunica.casefile.FaultyInput for an unknown segment or technique
     */
    public Explanation explain(CaseFile caseFile, String segmentRef, String techniqueId) {
        Asked asked = new Asked(knowledge);
        asked.segment(caseFile, segmentRef);
        asked.technique(techniqueId);
        return planner.explain(caseFile, release, new OptionKey(segmentRef, techniqueId));
    }

    /** A case as JSON, {@code tunica-case/1}; {@link #readCase} reads it back. */
    public String toJson(CaseFile caseFile) {
        return JsonOutput.of(caseFile);
    }

    /** An advice as JSON, {@code tunica-advice/1}; the same advice gives the same bytes. */
    public String toJson(Advice advice) {
        return JsonOutput.of(advice);
    }

    /** The JSON Schema of a contract, with the words and ranges of this release. */
    public String schema(Contract contract) {
        return new JsonSchemas(knowledge).of(contract);
    }

    /** What was done, how it went, and what a patient reads before. */
    public Treatments treatments() {
        return treatments;
    }

    /** Finished cases without the person. */
    public PastCases pastCases() {
        return pastCases;
    }

    /** Past segments like those of a case. */
    public Likeness likeness() {
        return likeness;
    }

    /** The results of past cases. */
    public Audits audits() {
        return audits;
    }

    /** The settings of heat devices. */
    public HeatAnswers heat() {
        return heat;
    }

    /** What a reviewer of these rules can ask of them. */
    public RuleReview review() {
        return RuleReview.of(bundle, knowledge, rules);
    }

    /** This release held against another, such as a draft. */
    public Replays against(Tunica after) {
        return new Replays(this, after);
    }

    /** The release in use: its version, state and digest. */
    public Advice.Release release() {
        return release;
    }

    /** The knowledge in use. */
    public Knowledge knowledge() {
        return knowledge;
    }

    /** The computed models in use. */
    public Physics physics() {
        return physics;
    }

    /** The rules in use. */
    public RuleBook rules() {
        return rules;
    }

    /** While loading, a number that a model lacks or cannot compute with is a fault of the bundle, not of the program. */
    private static <T> T accepted(Supplier<T> part) {
        try {
            return part.get();
        } catch (IllegalArgumentException e) {
            throw new FaultyInput("knowledge", List.of(new Fault("knowledge", e.getMessage())));
        }
    }
}
