package org.tunica.couch;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.frame.ForPeople;
import org.tunica.frame.Frame;
import org.tunica.frame.NotThere;
import org.tunica.frame.OpenCases;
import org.tunica.frame.Pages;
import org.tunica.similar.SimilarCases;
import org.tunica.similar.SimilarFilter;
import org.tunica.similar.SimilarRequest;
import org.tunica.store.KeptCase;
import org.tunica.store.Store;
import org.tunica.wording.SegmentWords;

/** Past segments like one of a case, on a page of their own: they inform, and change nothing of the advice. */
@RestController
@ForPeople
final class SimilarPages {
    private static final int LISTED = 5;
    private static final String NONE =
            "No past case is released here yet, so there is nothing this segment could be compared with.";

    private final Pages pages;
    private final Tunica tunica;
    private final Store store;
    private final OpenCases cases;
    private final PastLibrary library;

    SimilarPages(Pages pages, Tunica tunica, Store store, OpenCases cases, PastLibrary library) {
        this.pages = pages;
        this.tunica = tunica;
        this.store = store;
        this.cases = cases;
        this.library = library;
    }

    @GetMapping(path = "/cases/{caseRef}/similar/{segment}", produces = Pages.HTML)
    String similar(
            @PathVariable String caseRef,
            @PathVariable String segment,
            HttpServletRequest request,
            Authentication who) {
        KeptCase kept = cases.looked(caseRef, who);
        CaseFile caseFile = cases.read(kept);
        String title = title(caseFile, segment).orElseThrow(() -> new NotThere("segment"));
        Frame frame = pages.frame("Past segments like " + segment + " of case " + caseRef, request);
        SimilarPage page = found(caseFile, segment, DemoCases.invented(store.cases(), kept))
                .map(found -> SimilarPage.of(frame, title, found, tunica.knowledge()))
                .orElseGet(() -> SimilarPage.nothing(frame, caseRef, title, NONE));
        return pages.written("similar.jte", page);
    }

    private Optional<SimilarCases> found(CaseFile caseFile, String segment, boolean invented) {
        SimilarRequest wanted = new SimilarRequest(Optional.of(segment), SimilarFilter.ALL, LISTED);
        return library.forCase(invented).map(cases -> tunica.likeness().similar(caseFile, cases, wanted));
    }

    private static Optional<String> title(CaseFile caseFile, String ref) {
        for (Limb limb : caseFile.limbs()) {
            List<Segment> named = limb.segments().stream()
                    .filter(segment -> segment.ref().equals(ref))
                    .toList();
            if (!named.isEmpty()) {
                Segment segment = named.get(0);
                return Optional.of(SegmentWords.title(ref, limb.side(), segment.vein(), segment.level()));
            }
        }
        return Optional.empty();
    }
}
