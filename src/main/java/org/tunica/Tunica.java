package org.tunica;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.Nearest;
import org.tunica.casefile.Segment;
import org.tunica.firmness.FirmAdviser;
import org.tunica.heat.BenchFile;
import org.tunica.heat.Calibration;
import org.tunica.heat.CalibrationReport;
import org.tunica.heat.HeatNumbers;
import org.tunica.invented.InventedLibrary;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.CodeFile;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.ProposedChange;
import org.tunica.knowledge.Standing;
import org.tunica.outcomes.Audit;
import org.tunica.outcomes.AuditQuestion;
import org.tunica.outcomes.Auditor;
import org.tunica.outcomes.HappenedPage;
import org.tunica.outcomes.OutcomeNumbers;
import org.tunica.paper.Document;
import org.tunica.paper.Paper;
import org.tunica.pastcases.Anonymiser;
import org.tunica.pastcases.AnonymityLimits;
import org.tunica.pastcases.AnonymityReport;
import org.tunica.pastcases.CaseBase;
import org.tunica.pastcases.CaseCount;
import org.tunica.pastcases.CaseProgress;
import org.tunica.pastcases.Coarsening;
import org.tunica.pastcases.EachCase;
import org.tunica.pastcases.Finished;
import org.tunica.pastcases.PastCase;
import org.tunica.pastcases.PastCaseReader;
import org.tunica.pastcases.Release;
import org.tunica.pastcases.WaitingCase;
import org.tunica.physics.Physics;
import org.tunica.physics.SegmentWindow;
import org.tunica.picture.ChartWords;
import org.tunica.picture.OutcomePicture;
import org.tunica.picture.WindowPicture;
import org.tunica.picture.WindowWords;
import org.tunica.plan.Advice;
import org.tunica.plan.AdviceSoFar;
import org.tunica.plan.Explanation;
import org.tunica.plan.Planner;
import org.tunica.plan.ScoreWeights;
import org.tunica.plan.SegmentAdvice;
import org.tunica.review.RuleReview;
import org.tunica.rules.OptionKey;
import org.tunica.rules.RuleBook;
import org.tunica.session.SessionPlan;
import org.tunica.session.SessionPlanner;
import org.tunica.sheet.PatientSheet;
import org.tunica.similar.CaseLibrary;
import org.tunica.similar.CaseSource;
import org.tunica.similar.SimilarCases;
import org.tunica.similar.SimilarRequest;
import org.tunica.similar.SimilarWriter;
import org.tunica.similar.Similarity;
import org.tunica.treatment.DeliveredLimits;
import org.tunica.treatment.DeliveredSession;
import org.tunica.treatment.FollowUp;
import org.tunica.treatment.FollowUpLimits;
import org.tunica.treatment.NoteWriter;
import org.tunica.treatment.ProcedureNote;
import org.tunica.treatment.ScanPlan;
import org.tunica.treatment.TreatedPlan;
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
    private final PatientSheet sheets;
    private final NoteWriter notes;
    private final Auditor auditor;
    private final Advice.Release release;

    private Tunica(Bundle bundle) {
        this.bundle = bundle;
        this.knowledge = Knowledge.of(bundle);
        this.physics = accepted(() -> new Physics(knowledge));
        this.rules = RuleBook.of(bundle, knowledge);
        everyNumberIsUsed();
        accepted(() -> {
            Treatment.check(knowledge);
            Similarity.check(knowledge);
            return knowledge;
        });
        this.planner = accepted(() -> new Planner(knowledge, physics, rules));
        this.sessions = accepted(() -> new SessionPlanner(knowledge, physics));
        this.sheets = accepted(() -> new PatientSheet(knowledge));
        this.notes = accepted(() -> new NoteWriter(knowledge, physics.heatGiven()));
        this.firmness = accepted(() -> new FirmAdviser(knowledge, physics, rules, planner, sessions::minutes));
        this.auditor = accepted(() -> new Auditor(knowledge, AUDIT_SEED));
        this.release = new Advice.Release(DRAFT_VERSION, Advice.Release.State.DRAFT, bundle.digest());
    }

    /**
     * The rules and knowledge shipped with the program, loaded once.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault of its files
     */
    public static synchronized Tunica shipped() {
        if (shipped == null) {
            shipped = new Tunica(Bundle.shipped());
        }
        return shipped;
    }

    /**
     * The rules and knowledge of a bundle.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault of its files
     */
    public static Tunica of(Bundle bundle) {
        return new Tunica(bundle);
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
        return firmness.firm(caseFile, planner.advise(caseFile, release));
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
        return sessions.plan(caseFile, planner.advise(caseFile, release));
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

    /**
     * Reads the record of a delivered session.
     *
     * @param what the name of the input, for messages
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path, and both numbers of a contradiction
     */
    public DeliveredSession readDelivered(String what, byte[] json) {
        return DeliveredSession.read(what, json, knowledge);
    }

    /**
     * The procedure note of a delivered session.
     *
     * @throws org.tunica.casefile.FaultyInput when plan and record do not belong together
     */
    public ProcedureNote note(SessionPlan plan, DeliveredSession delivered) {
        return notes.write(plan, delivered);
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

    /**
     * Reads from a plan what was to be treated where.
     *
     * @param what the name of the input, for messages
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path
     */
    public TreatedPlan readTreated(String what, byte[] json) {
        return TreatedPlan.read(what, json, knowledge);
    }

    /**
     * Reads a follow-up, {@code tunica-followup/1}.
     *
     * @param what the name of the input, for messages
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path
     */
    public FollowUp readFollowUp(String what, byte[] json) {
        return FollowUp.read(what, json, knowledge);
    }

    /**
     * What was done and how it went.
     *
     * @param delivered records of the sessions; without any, what was planned counts as done
     * @throws org.tunica.casefile.FaultyInput with every way in which they do not belong together
     */
    public Treatment treatment(TreatedPlan planned, List<DeliveredSession> delivered, FollowUp followUp) {
        return Treatment.of(planned, delivered, followUp, knowledge);
    }

    /**
     * A sheet for the patient: the options that can be talked about or, where a technique was chosen, that one alone.
     *
     * @param chosen id of the technique chosen, by segment; it goes before what the case says
     * @throws org.tunica.casefile.FaultyInput for an unknown segment or technique, or when a rule excludes what is chosen
     */
    public Document sheet(CaseFile caseFile, Map<String, String> chosen) {
        chosen.forEach((ref, technique) -> {
            segment(caseFile, ref);
            known(technique);
        });
        return sheets.of(caseFile, advise(caseFile), chosen);
    }

    /**
     * Reads a past case, {@code tunica-past/1}.
     *
     * @param what the name of the input, for messages
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path
     */
    public PastCase readPastCase(String what, byte[] json) {
        return new PastCaseReader(knowledge).read(what, json);
    }

    /**
     * Takes the person out of a finished case; a human has to release what comes out.
     *
     * @param planned what was planned, of which the case and the records are
     * @param ids random ids as {@link PastCase#ID} wants them
     * @throws org.tunica.casefile.FaultyInput with every reason why it cannot become a past case
     */
    public WaitingCase anonymise(Finished finished, TreatedPlan planned, Supplier<String> ids) {
        try {
            treatment(planned, finished.delivered(), finished.followUp());
        } catch (FaultyInput e) {
            // its message may hold names of the clinic
            throw new FaultyInput(
                    "retain",
                    List.of(new Fault(
                            "plan, deliveries and follow-up",
                            "do not belong together; tunica followup with the same files tells where")));
        }
        WaitingCase waiting = new Anonymiser(knowledge, ids).anonymise(finished);
        return readWaitingCase("the case made anonymous", toLine(waiting).getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Reads a case that waits for its release, {@code tunica-waiting/1}.
     *
     * @param what the name of the input, for messages
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path
     */
    public WaitingCase readWaitingCase(String what, byte[] json) {
        return new PastCaseReader(knowledge).readWaiting(what, json);
    }

    /** A waiting case as JSON on one line, {@code tunica-waiting/1}. */
    public String toLine(WaitingCase waiting) {
        return JsonOutput.line(waiting);
    }

    /** The same waiting case with less told. */
    public WaitingCase coarser(WaitingCase waiting, Set<Coarsening.What> less, Set<String> without) {
        return new Coarsening(knowledge).of(waiting, less, without);
    }

    /** The past cases in a folder, which need not be there yet. */
    public CaseBase caseBase(Path folder) {
        return new CaseBase(folder, knowledge, this::toLine);
    }

    /** A release of waiting cases into a base. */
    public Release release(EachCase released) {
        return new Release(knowledge, released);
    }

    /** How well nobody can be found in a base of past cases. */
    public AnonymityReport anonymityReport(EachCase released) {
        return AnonymityReport.of(knowledge, released);
    }

    /** A report on anonymity as JSON, {@code tunica-anonymity/1}. */
    public String toJson(AnonymityReport report) {
        return JsonOutput.of(report);
    }

    /**
     * Reads every line of a file of past cases and counts.
     *
     * @throws org.tunica.casefile.FaultyInput with each faulty line and its number
     */
    public CaseCount checkCases(Path file, CaseProgress progress) {
        return CaseBase.checkFile(file, new PastCaseReader(knowledge), progress);
    }

    /** Finished cases that nobody ever was, the same for the same seed. */
    public InventedLibrary inventedLibrary(long seed) {
        return new InventedLibrary(knowledge, seed);
    }

    /** A past case as JSON on one line, {@code tunica-past/1}, as it stands in a case base. */
    public String toLine(PastCase pastCase) {
        return JsonOutput.line(pastCase);
    }

    /** The usual library of made-up past cases, to be searched; its index is in memory. */
    public CaseLibrary inventedCases() {
        long seed = InventedLibrary.USUAL_SEED;
        CaseSource source = new InventedCases(inventedLibrary(seed), seed, InventedLibrary.USUAL_COUNT);
        return CaseLibrary.inMemory(source, knowledge, physics);
    }

    /**
     * The released past cases of a case base, to be searched.
     *
     * @param folder of the case base
     * @throws org.tunica.casefile.FaultyInput when a case cannot be read
     */
    public CaseLibrary cases(Path folder) {
        return CaseLibrary.of(folder, knowledge, physics);
    }

    /**
     * Past segments like those of a case, and why.
     *
     * @throws org.tunica.casefile.FaultyInput for an unknown segment or technique
     */
    public SimilarCases similar(CaseFile caseFile, CaseLibrary library, SimilarRequest request) {
        request.segment().ifPresent(ref -> segment(caseFile, ref));
        request.filter().technique().ifPresent(this::known);
        return new SimilarWriter(library, physics, knowledge).of(caseFile, request);
    }

    /**
     * Past segments whose notes fit some words best.
     *
     * @throws org.tunica.casefile.FaultyInput for an unknown technique
     */
    public SimilarCases similar(String words, CaseLibrary library, SimilarRequest request) {
        request.filter().technique().ifPresent(this::known);
        return new SimilarWriter(library, physics, knowledge).byWords(words, request);
    }

    /** An advice with past segments beside each of the case. They change nothing else of it. */
    public Advice withSimilar(Advice advice, CaseFile caseFile, CaseLibrary library) {
        SimilarCases similar = similar(caseFile, library, SimilarRequest.usual());
        List<SegmentAdvice> segments = new ArrayList<>();
        for (int i = 0; i < advice.segments().size(); i++) {
            segments.add(advice.segments()
                    .get(i)
                    .withSimilar(similar.segments().get(i).similar()));
        }
        return new Advice(
                advice.format(), advice.caseRef(), advice.release(), advice.seed(), advice.caution(), segments);
    }

    /** Writes what happened to the nearest past segments. */
    public HappenedPage happenedPage() {
        return new HappenedPage(OutcomeNumbers.of(knowledge));
    }

    /** Past segments like those of a case as JSON, {@code tunica-similar/1}. */
    public String toJson(SimilarCases similar) {
        return JsonOutput.of(similar);
    }

    /**
     * Results of past cases held against published rates and each other.
     *
     * @param cases in the order of their base
     * @throws org.tunica.casefile.FaultyInput with everything that cannot be asked
     */
    public Audit audit(Stream<PastCase> cases, AuditQuestion question) {
        return auditor.audit(cases, question);
    }

    /**
     * The same of a case base.
     *
     * @throws org.tunica.casefile.FaultyInput with everything that cannot be asked, or each damaged line of the base
     */
    public Audit audit(CaseBase base, AuditQuestion question, CaseProgress progress) {
        return auditor.audit(base, question, progress);
    }

    /** An audit as a page without charts. */
    public Document text(Audit audit) {
        return auditor.text(audit);
    }

    /** An audit as a page with charts. */
    public Document page(Audit audit) {
        return auditor.page(audit, release);
    }

    /** The charts of an audit, each by a name for its file, with heading, table and notes. */
    public Map<String, OutcomePicture> charts(Audit audit, int widthPx) {
        return auditor.charts(audit, release, widthPx);
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
     * What the settings of a heat device do to the wall of one segment.
     *
     * @throws org.tunica.casefile.FaultyInput for an unknown segment or technique, a technique that is no heat device, a
     *     measurement that is missing, or a wall the heat model does not answer for
     */
    public SegmentWindow heatWindow(CaseFile caseFile, String segmentRef, String techniqueId) {
        SegmentWindow window = physics.heatWindows().of(caseFile, segment(caseFile, segmentRef), techniqueId);
        SegmentAdvice advice =
                planner.advise(caseFile.only(segmentRef), release).segments().get(0);
        return advice.options().stream()
                .filter(option -> option.technique().equals(techniqueId))
                .map(option -> window.standing(
                        "In the advice for this segment of the "
                                + advice.side().word().toUpperCase(Locale.ROOT) + " leg the technique stands as "
                                + option.standing().word() + ": " + option.why() + ".",
                        option.standing().ranked()))
                .findFirst()
                .orElse(window);
    }

    /**
     * Why a technique stands as it does for a segment: every rule, whether it spoke or not.
     *
     * @throws org.tunica.casefile.FaultyInput for an unknown segment or technique
     */
    public Explanation explain(CaseFile caseFile, String segmentRef, String techniqueId) {
        segment(caseFile, segmentRef);
        known(techniqueId);
        return planner.explain(caseFile, release, new OptionKey(segmentRef, techniqueId));
    }

    private void known(String techniqueId) {
        if (!knowledge.techniqueIds().contains(techniqueId)) {
            throw new FaultyInput(
                    "input",
                    List.of(new Fault(
                            "technique " + techniqueId,
                            "there is no such technique" + Nearest.hint(techniqueId, knowledge.techniqueIds()))));
        }
    }

    private static Segment segment(CaseFile caseFile, String ref) {
        List<Segment> segments = caseFile.limbs().stream()
                .flatMap(limb -> limb.segments().stream())
                .toList();
        List<String> refs = segments.stream().map(Segment::ref).toList();
        return segments.stream()
                .filter(segment -> segment.ref().equals(ref))
                .findFirst()
                .orElseThrow(() -> new FaultyInput(
                        "input",
                        List.of(new Fault(
                                "segment " + ref,
                                "the case has none of that name, only " + String.join(", ", refs)
                                        + Nearest.hint(ref, refs)))));
    }

    /** The words and the table that go with a heat window. */
    public ChartWords words(SegmentWindow window) {
        return WindowWords.of(window, release);
    }

    /**
     * A heat window as a drawing.
     *
     * @param widthPx width, see {@link WindowPicture}
     */
    public WindowPicture picture(SegmentWindow window, int widthPx) {
        return WindowPicture.of(window, words(window), widthPx);
    }

    /** A case as JSON, {@code tunica-case/1}; {@link #readCase} reads it back. */
    public String toJson(CaseFile caseFile) {
        return JsonOutput.of(caseFile);
    }

    /** An advice as JSON, {@code tunica-advice/1}; the same advice gives the same bytes. */
    public String toJson(Advice advice) {
        return JsonOutput.of(advice);
    }

    /**
     * Fits constants of the heat model to the bench measurements of a laboratory.
     *
     * @param what the name of the input, for messages
     * @param freeIds the constants that may move; empty for those of local standing that move a depth of the file
     * @throws org.tunica.casefile.FaultyInput with every fault of the file by line and column, or of the constants
     */
    public CalibrationReport calibrate(String what, byte[] csv, List<String> freeIds) {
        Calibration calibration = Calibration.of(new HeatNumbers(
                knowledge::value,
                id -> knowledge.quantity(id).low().orElse(knowledge.value(id)),
                id -> knowledge.quantity(id).high().orElse(knowledge.value(id))));
        BenchFile bench = calibration.read(what, csv);
        return calibration.fit(bench, freeIds.isEmpty() ? calibration.acting(bench, this::local) : freeIds);
    }

    private boolean local(String id) {
        return knowledge.quantity(id).provenance().standing() == Standing.LOCAL;
    }

    /**
     * The change of knowledge a fit would propose; nothing of it is in force.
     *
     * @throws org.tunica.casefile.FaultyInput when the bench file names no date, the fit did not come to rest or a constant
     *     is not fixed by the data
     */
    public ProposedChange propose(CalibrationReport report) {
        return new CalibrationProposal(knowledge, report).change();
    }

    /** The JSON Schema of a case, with the words and ranges of this release. */
    public String caseSchema() {
        return new JsonSchemas(knowledge).ofCase();
    }

    /** The JSON Schema of an advice. */
    public String adviceSchema() {
        return new JsonSchemas(knowledge).ofAdvice();
    }

    /** The JSON Schema of a follow-up, with the words and ranges of this release. */
    public String followUpSchema() {
        return new JsonSchemas(knowledge).ofFollowUp();
    }

    /** The JSON Schema of past segments like those of a case. */
    public String similarSchema() {
        return new JsonSchemas(knowledge).ofSimilar();
    }

    /** The JSON Schema of an audit of outcomes. */
    public String auditSchema() {
        return new JsonSchemas(knowledge).ofAudit();
    }

    /** The JSON Schema of a past case, with the words and ranges of this release. */
    public String pastCaseSchema() {
        return new JsonSchemas(knowledge).ofPastCase();
    }

    /** What a reviewer of these rules can ask of them. */
    public RuleReview review() {
        return RuleReview.of(bundle, knowledge, rules);
    }

    /** The JSON Schema of a plan. */
    public String planSchema() {
        return new JsonSchemas(knowledge).ofPlan();
    }

    /** The JSON Schema of a record of a delivered session. */
    public String deliveredSchema() {
        return new JsonSchemas(knowledge).ofDelivered();
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

    /** A limit that nothing reads would be a number somebody believes to be in force. */
    private void everyNumberIsUsed() {
        Set<String> used = new HashSet<>(rules.limitsUsed());
        used.addAll(physics.quantitiesUsed());
        used.addAll(ScoreWeights.IDS);
        used.addAll(SessionPlanner.IDS);
        used.addAll(FirmAdviser.ids());
        used.addAll(FollowUpLimits.IDS);
        used.addAll(ScanPlan.IDS);
        used.addAll(OutcomeNumbers.IDS);
        used.addAll(DeliveredLimits.IDS);
        used.add(CodeFile.MOST_AGE);
        used.addAll(Similarity.IDS);
        used.addAll(AnonymityLimits.IDS);
        Faults faults = new Faults();
        knowledge.quantities().keySet().stream()
                .filter(id -> !used.contains(id))
                .forEach(id -> faults.add("knowledge", id + " is used by no rule and no model"));
        faults.throwIfAny("knowledge");
    }
}
