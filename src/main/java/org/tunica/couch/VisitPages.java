package org.tunica.couch;

import jakarta.servlet.http.HttpServletRequest;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.JsonText;
import org.tunica.casefile.Limb;
import org.tunica.frame.ForPeople;
import org.tunica.frame.OpenCases;
import org.tunica.frame.Pages;
import org.tunica.frame.Reader;
import org.tunica.store.Act;
import org.tunica.store.DocumentKind;
import org.tunica.store.KeptDocument;
import org.tunica.store.Store;
import org.tunica.store.Subject;
import org.tunica.treatment.TreatedSegment;
import org.tunica.wording.SegmentWords;
import tools.jackson.databind.JsonNode;

/** Where a visit after a closure is recorded; it is added to the visits before. */
@RestController
@ForPeople
final class VisitPages {
    private static final String AT = "/cases/{caseRef}/follow-up";

    private final Pages pages;
    private final Tunica tunica;
    private final Store store;
    private final OpenCases cases;
    private final CaseWork work;
    private final VisitAsks asks;

    VisitPages(Pages pages, Tunica tunica, Store store, OpenCases cases) {
        this.pages = pages;
        this.tunica = tunica;
        this.store = store;
        this.cases = cases;
        this.work = new CaseWork(tunica, store);
        this.asks = VisitAsks.of(tunica.knowledge());
    }

    /** An empty visit; what stays the same of each segment is in it already. */
    @GetMapping(path = AT, produces = Pages.HTML)
    String form(@PathVariable String caseRef, HttpServletRequest request, Authentication who) {
        List<TreatedSegment> treated = treated(caseRef);
        store.audit()
                .note(
                        Reader.of(who).actor(),
                        Act.VIEWED,
                        new Subject("documents", caseRef + "/" + DocumentKind.FOLLOW_UP.word()));
        return page(caseRef, treated, start(treated, before(caseRef)), List.of(), request);
    }

    /** Keeps the follow-up with this visit in it; one that cannot be kept comes back whole. */
    @PostMapping(path = AT, produces = Pages.HTML)
    ResponseEntity<String> add(
            @PathVariable String caseRef,
            @RequestParam MultiValueMap<String, String> fields,
            HttpServletRequest request,
            Authentication who) {
        List<TreatedSegment> treated = treated(caseRef);
        Typed typed = new Typed(fields);
        TypedVisit written = TypedVisit.of(asks, caseRef, typed, treated, before(caseRef));
        List<Fault> faults = new ArrayList<>(written.faults());
        if (faults.isEmpty()) {
            try {
                work.followUp(
                        Reader.of(who).actor(),
                        caseRef,
                        Optional.empty(),
                        written.json().getBytes(StandardCharsets.UTF_8));
                return ResponseEntity.status(HttpStatus.SEE_OTHER)
                        .header("Location", "/cases/" + caseRef + "/papers")
                        .build();
            } catch (FaultyInput e) {
                e.faults().forEach(fault -> faults.add(new Fault(written.field(fault.place()), fault.says())));
            }
        }
        return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
                .body(page(caseRef, treated, typed, faults, request));
    }

    private List<TreatedSegment> treated(String caseRef) {
        cases.latest(caseRef);
        return work.treated(caseRef).segments();
    }

    private Optional<JsonNode> before(String caseRef) {
        List<KeptDocument> kept = store.documents().of(caseRef, DocumentKind.FOLLOW_UP);
        return kept.isEmpty()
                ? Optional.empty()
                : Optional.of(JsonText.parse(
                        "follow-up", kept.get(kept.size() - 1).document().body().getBytes(StandardCharsets.UTF_8)));
    }

    private static Typed start(List<TreatedSegment> treated, Optional<JsonNode> before) {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        for (int at = 0; at < treated.size(); at++) {
            String prefix = Intended.segment(at) + ".";
            TreatedSegment segment = treated.get(at);
            if (segment.deliveredLengthCm().isPresent()) {
                fields.put(
                        prefix + "treatedLengthCm",
                        List.of(plain(segment.deliveredLengthCm().getAsDouble())));
            }
            before.ifPresent(kept -> kept.path("limbs")
                    .valueStream()
                    .flatMap(limb -> limb.path("treated").valueStream())
                    .filter(one -> one.path("ref").asString("").equals(segment.ref()))
                    .forEach(one -> List.of("treatedLengthCm", "closure")
                            .forEach(field -> fields.put(
                                    prefix + field, List.of(one.path(field).asString(""))))));
        }
        return new Typed(fields);
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private String page(
            String caseRef, List<TreatedSegment> treated, Typed typed, List<Fault> faults, HttpServletRequest request) {
        FormFields fields = new FormFields(typed, faults);
        FormBlock head = fields.block("", "The visit", asks.head());
        List<EntryPage.Part> parts = new ArrayList<>();
        for (Limb.Side side : Limb.Side.values()) {
            if (treated.stream().anyMatch(segment -> segment.side() == side)) {
                parts.add(part(
                        fields.block(side.word(), side.word().toUpperCase(Locale.ROOT) + " leg", asks.limb()),
                        List.of()));
            }
            for (int at = 0; at < treated.size(); at++) {
                if (treated.get(at).side() == side) {
                    parts.add(segment(fields, treated.get(at), at));
                }
            }
        }
        return pages.written(
                "entry.jte",
                new EntryPage(
                        pages.frame("Follow-up of case " + caseRef, request),
                        caseRef,
                        "/cases/" + caseRef + "/follow-up",
                        List.of(
                                "One visit. It is added to those recorded before; a visit of the same day takes the"
                                        + " place of that one, which stays kept.",
                                "What was not looked at or not asked stays \"not recorded\": it is never taken for"
                                        + " closed, nor for no complication."),
                        head,
                        parts,
                        fields.mends(),
                        "Keep the visit"));
    }

    private EntryPage.Part segment(FormFields fields, TreatedSegment segment, int at) {
        String title = SegmentWords.title(segment.ref(), segment.side(), segment.vein(), segment.level());
        return part(
                fields.block(Intended.segment(at), title, asks.segment()),
                List.of("Treated with " + segment.says() + "."));
    }

    private static EntryPage.Part part(FormBlock block, List<String> says) {
        return new EntryPage.Part(block, says, "", false);
    }
}
