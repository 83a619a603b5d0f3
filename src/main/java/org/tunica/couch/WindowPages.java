package org.tunica.couch;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.FaultyInput;
import org.tunica.drawing.WallCoats;
import org.tunica.frame.ForPeople;
import org.tunica.frame.NotThere;
import org.tunica.frame.OpenCases;
import org.tunica.frame.Pages;
import org.tunica.frame.Remembered;
import org.tunica.frame.SaysPage;
import org.tunica.heat.HeatSetting;
import org.tunica.heat.ProposedSetting;
import org.tunica.pages.PointView;
import org.tunica.physics.SegmentWindow;
import org.tunica.physics.SettingReach;
import org.tunica.picture.ChartWords;
import org.tunica.store.KeptCase;

/** The page on which a setting of a heat device is moved over one wall, and what it does there is computed anew. */
@RestController
@ForPeople
final class WindowPages {
    private static final String AT = "/cases/{caseRef}/window/{segment}/{technique}";

    /** What the session keeps of the case whose window it opened last: its reference and version. */
    private static final String LOOKED_AT = "tunica.window";

    private static final int MOST_REMEMBERED = 24;
    private static final byte[] SCRIPT = shipped();

    private final Pages pages;
    private final Tunica tunica;
    private final OpenCases cases;
    private final WallCoats coats;
    private final Remembered<Key, SegmentWindow> windows;

    /** What a window is of; a case read from a store holds no name. */
    private record Key(CaseFile caseFile, String segment, String technique) {}

    WindowPages(Pages pages, Tunica tunica, OpenCases cases) {
        this.pages = pages;
        this.tunica = tunica;
        this.cases = cases;
        this.coats = WallCoats.of(tunica.knowledge());
        this.windows = new Remembered<>(
                MOST_REMEMBERED,
                asked -> tunica.heat().heatWindow(asked.caseFile(), asked.segment(), asked.technique()));
    }

    /** A setting and what it does; the map around it when it is known, or asked for and then computed. */
    @GetMapping(path = AT, produces = Pages.HTML)
    ResponseEntity<String> window(
            @PathVariable String caseRef,
            @PathVariable String segment,
            @PathVariable String technique,
            @RequestParam Optional<String> powerW,
            @RequestParam Optional<String> pullbackSPerCm,
            @RequestParam(defaultValue = "") String move,
            @RequestParam Optional<String> map,
            HttpServletRequest request,
            Authentication who) {
        CaseFile caseFile = opened(caseRef, who, request);
        SegmentWindow outline;
        try {
            outline = tunica.heat().outline(caseFile, segment, technique);
        } catch (FaultyInput e) {
            return none(caseRef, e, request);
        }
        Optional<WindowPage.Form> form = Optional.empty();
        if (outline.repeats().isEmpty()) {
            TypedSetting first = first(outline);
            TypedSetting typed = TypedSetting.of(
                            powerW.orElse(first.powerW()), pullbackSPerCm.orElse(first.pullbackSPerCm()), reach())
                    .moved(move, reach());
            Optional<SegmentWindow> window = map.isPresent()
                    ? Optional.of(windows.of(new Key(caseFile, segment, technique)))
                    : windows.known(new Key(caseFile, segment, technique));
            form = Optional.of(new WindowPage.Form(
                    starts(outline),
                    typed.powerW(),
                    typed.pullbackSPerCm(),
                    reach(),
                    point(caseFile, segment, technique, typed),
                    window.flatMap(computed -> map(computed, typed))));
        }
        return ResponseEntity.ok(pages.written("window.jte", page(caseRef, outline, form, request)));
    }

    /** What one setting does, as the part of the page that tells it. */
    @GetMapping(path = AT + "/point", produces = Pages.HTML)
    String point(
            @PathVariable String caseRef,
            @PathVariable String segment,
            @PathVariable String technique,
            @RequestParam(defaultValue = "") String powerW,
            @RequestParam(defaultValue = "") String pullbackSPerCm,
            HttpServletRequest request,
            Authentication who) {
        CaseFile caseFile = stillOpen(caseRef, who, request);
        TypedSetting typed = TypedSetting.of(powerW, pullbackSPerCm, reach());
        return pages.written("window-point.jte", point(caseFile, segment, technique, typed));
    }

    /** The map around a setting, as the part of the page that shows it; it may take seconds. */
    @GetMapping(path = AT + "/map", produces = Pages.HTML)
    String map(
            @PathVariable String caseRef,
            @PathVariable String segment,
            @PathVariable String technique,
            @RequestParam(defaultValue = "") String powerW,
            @RequestParam(defaultValue = "") String pullbackSPerCm,
            HttpServletRequest request,
            Authentication who) {
        CaseFile caseFile = stillOpen(caseRef, who, request);
        TypedSetting typed = TypedSetting.of(powerW, pullbackSPerCm, reach());
        return map(windows.of(new Key(caseFile, segment, technique)), typed)
                .map(found -> pages.written("window-map.jte", found))
                .orElseThrow(() -> new NotThere("map"));
    }

    /** What moves a setting without sending the whole page anew. */
    @GetMapping(path = "/window.js", produces = "text/javascript;charset=UTF-8")
    byte[] script() {
        return SCRIPT;
    }

    private static byte[] shipped() {
        try (InputStream in = WindowPages.class.getResourceAsStream("/web/window.js")) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its file web/window.js");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private CaseFile opened(String caseRef, Authentication who, HttpServletRequest request) {
        KeptCase kept = cases.latest(caseRef);
        note(kept, who, request);
        return cases.read(kept);
    }

    /** For a part of the page: moving a setting is no new look at the case, so one row of the trail tells of it all. */
    private CaseFile stillOpen(String caseRef, Authentication who, HttpServletRequest request) {
        KeptCase kept = cases.latest(caseRef);
        if (!OpenCases.version(kept).equals(request.getSession().getAttribute(LOOKED_AT))) {
            note(kept, who, request);
        }
        return cases.read(kept);
    }

    private void note(KeptCase kept, Authentication who, HttpServletRequest request) {
        cases.note(kept, who);
        request.getSession().setAttribute(LOOKED_AT, OpenCases.version(kept));
    }

    private SettingReach reach() {
        return tunica.heat().reach();
    }

    private ResponseEntity<String> none(String caseRef, FaultyInput e, HttpServletRequest request) {
        List<String> says = e.faults().stream()
                .map(fault -> fault.place() + " " + fault.says() + ".")
                .toList();
        return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
                .body(pages.says(new SaysPage(
                        pages.frame("No energy window here", request),
                        says,
                        List.of(new SaysPage.Way("/cases/" + caseRef, "Back to the case")))));
    }

    private TypedSetting first(SegmentWindow outline) {
        return proposed(outline)
                .map(setting -> TypedSetting.of(setting.powerW(), setting.pullbackSPerCm()))
                .orElseGet(() -> TypedSetting.of(
                        reach().powerW().first(), reach().pullbackSPerCm().first()));
    }

    private static Optional<HeatSetting.Pulled> proposed(SegmentWindow outline) {
        return outline.proposed()
                .map(ProposedSetting::setting)
                .filter(HeatSetting.Pulled.class::isInstance)
                .map(HeatSetting.Pulled.class::cast);
    }

    private static String starts(SegmentWindow outline) {
        return proposed(outline)
                .map(setting -> "The setting to consider, by the advice: " + PointView.setting(setting) + ".")
                .orElse("No setting is proposed: something it rests on is not recorded, or the advice does not rank"
                        + " the technique. The page starts at the weakest setting offered.");
    }

    private WindowPage.Point point(CaseFile caseFile, String segment, String technique, TypedSetting typed) {
        if (!typed.faults().isEmpty()) {
            return new WindowPage.Point(typed.faults(), Optional.empty());
        }
        return new WindowPage.Point(
                List.of(),
                Optional.of(PointView.of(
                        tunica.heat().point(caseFile, segment, technique, typed.watt(), typed.sPerCm()),
                        coats,
                        tunica.knowledge())));
    }

    private Optional<WindowPage.Map> map(SegmentWindow window, TypedSetting typed) {
        ChartWords words = tunica.heat().words(window);
        return tunica.heat()
                .map(window)
                .map(place -> new WindowPage.Map(
                        typed.faults().isEmpty() ? place.marked(typed.watt(), typed.sPerCm()) : place.unmarked(),
                        place,
                        words));
    }

    private WindowPage page(
            String caseRef, SegmentWindow outline, Optional<WindowPage.Form> form, HttpServletRequest request) {
        String segment = outline.segment().ref();
        return new WindowPage(
                pages.frame(
                        "Energy window, segment " + segment + ": "
                                + outline.technique().says(),
                        request),
                caseRef,
                "/cases/" + caseRef + "/window/" + segment + "/"
                        + outline.technique().id(),
                tunica.heat().subtitle(outline),
                outline.standing().orElse(""),
                form,
                outline.repeats().isEmpty()
                        ? Optional.empty()
                        : Optional.of(tunica.heat().words(outline)));
    }
}
