package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.http.server.PathContainer;
import org.springframework.web.util.pattern.PathPattern;
import org.springframework.web.util.pattern.PathPatternParser;

/**
 * A walk over every page for people, each with something on it and all its folds open: nothing hinders on a light or on a
 * dark ground. The pages are those the running server knows of itself, so that a new one nobody walks to fails.
 */
class EveryPageTest {
    private static final String NOBODY = "";
    private static final int MOST_TOLD = 500;

    /** What is answered to people and is no page of its own: a way on, looks and scripts, papers, parts a script asks for. */
    private static final Set<String> NO_PAGE = Set.of(
            "/look.css",
            "/window.js",
            "/cases/take-file.js",
            "/governance/follow.js",
            "/governance",
            "/cases/{caseRef}/sheet",
            "/meeting/packets/{meetingId}/pdf",
            "/results/pdf",
            "/cases/{caseRef}/window/{segment}/{technique}/point",
            "/cases/{caseRef}/window/{segment}/{technique}/map");

    /**
     * Who is signed in, then a line for each page: its address, with names in braces for what only the clinic knows, and what
     * stands on it. Where a third part follows, the form whose action ends so is sent with nothing in it, and the page that
     * refuses it is looked at.
     */
    private static final List<Stop> WALK = Stream.of(
                    everyStop(NOBODY, """
            /sign-in | Password
            /sign-in?refused | is not right
            /signed-out | You are signed out.
            /first-start/{first} | who adds users and sees no case
            /first-start/none | This link leads nowhere
            /first-start/{first} | That did not work | /first-start/{first}
            /password/rosa/{link} | the password of user rosa
            /api | /api/cases
            """),
                    everyStop(FilledClinic.WREN, """
            / | What is here
            /my-password | Every session with the password in use ends.
            /my-password | That did not work | /my-password
            /cases | walk-1
            /cases/new | Segment
            /cases/new | nothing was saved | /cases/new
            /cases/import | Take a case over
            /cases/import | That did not work | /cases/import
            /cases/walk-1 | in repair until May
            /cases/none | That did not work
            /cases/walk-1 | Choose one of the options. | /choices/L1#L1
            /cases/walk-1/edit | walk-1
            /cases/walk-1/similar/L1 | Why it is alike
            /cases/walk-1/window/L1/rf-bipolar-pullback?powerW=8&pullbackSPerCm=6&map=shown | The map in words
            /cases/walk-1/window/L1/rf-bipolar-pullback?powerW=much&pullbackSPerCm=900 | That did not work
            /cases/walk-1/window/L1/rf-segmental-7cm | leaves neither power nor pullback to choose
            /cases/walk-1/window/L1/foam-polidocanol | is no heat device
            /cases/walk-1/plan | NOT KEPT
            /cases/walk-1/plan?number=1 | This is plan 1
            /cases/walk-1/plan/1/sessions/1/delivered | I have looked through every value
            /cases/walk-1/plan/1/sessions/1/delivered | nothing was saved | /delivered
            /cases/walk-1/papers | Day 42
            /cases/walk-1/follow-up | Treated with segmental RF
            /cases/walk-1/follow-up | nothing was saved | /follow-up
            /cases/walk-1/past | Take the person out
            /cases/walk-1/past | That did not work | /past
            /cases/walk-2/past | Not finished
            /past | {past}
            /past | That did not work | /withdrawal
            /past/look?id={past} | slept well
            /past/look?id={past} | That did not work | /less
            /past/look?id={past} | none was marked as read | /release
            /cases/walk-1/meeting | DISSENT of MN
            /cases/walk-2/meeting | That did not work | /meeting
            /meeting | {waiting}
            /meeting/agenda/2026-12-01 | {waiting}
            /meeting/packets/{waiting} | And the other leg?
            /meeting/packets/{waiting}/decision | Who did not agree
            /meeting/packets/{waiting}/decision | That did not work | /decision
            """),
                    everyStop(FilledClinic.LEAD, """
            / | What is here
            /cases | not open to you
            /results | At a glance, at one year
            /results?from=May | must be a year
            /results?technique=foam-polidocanol | Stayed closed up to that day
            /governance/rules | EXC-007
            /governance/rules/EXC-007 | heat-near-skin.feature
            /governance/due | Reviews and unverified numbers
            /governance/feedback | Nobody has judged it yet.
            /governance/feedback | must be chosen | /card-1
            /governance/releases | Release 1.1.0 is in force.
            /governance/releases/1.1.0 | clara as clinical lead
            /governance/releases/1.2.0 | Put in force now
            /governance/releases/1.3.0 | Hand in my signature
            /governance/releases/1.3.0 | That did not work | /signatures
            /governance/releases/1.3.0/replay | 15 cases with 20 segments
            /governance/releases/1.2.0/acts/activation | Release 1.1.0 gives way to release 1.2.0
            /governance/releases/1.2.0/acts/schedule | From when, UTC
            /governance/releases/1.1.0/acts/review | Next review by
            /governance/releases/1.1.0/acts/rollback | Release 1.0.0 is in force again at once.
            /governance/releases/1.1.0/acts/rollback | That did not work | /rollback
            """),
                    everyStop(FilledClinic.AUTHOR, """
            /governance/changes | A wider gap to the skin
            /governance/changes | That did not work | /changes
            /governance/changes/{begun}/number?id=heat.skin-gap.min | Save the number
            /governance/changes/{begun}/number?id=heat.skin-gap.min | That did not work | /number
            /governance/changes/{begun}/rule?id=EXC-007 | Save the rule
            /governance/changes/{begun}/text?path=rules/2-exclusions/heat-near-skin.rule | Save the file
            /governance/changes/{begun} | Run the checks
            /governance/changes/{begun} | must be given | /reason
            /governance/changes/{change}?checks | Nothing bars it
            /governance/changes/{change}/replay | 15 cases with 20 segments
            """))
            .flatMap(List::stream)
            .toList();

    @TempDir
    private static Path folder;

    private static Clinic clinic;
    private static Map<String, String> places;

    /**
     * A page of the walk.
     *
     * @param who is signed in, or nobody
     * @param sends the end of the action of a form that is sent with nothing in it, if one is
     */
    private record Stop(String who, String address, String shows, Optional<String> sends) {}

    private static List<Stop> everyStop(String who, String lines) {
        return lines.lines()
                .map(line -> line.split(" \\| "))
                .map(part -> new Stop(who, part[0], part[1], part.length > 2 ? Optional.of(part[2]) : Optional.empty()))
                .toList();
    }

    @BeforeAll
    static void open() throws Exception {
        clinic = Clinic.open(folder);
        places = new FilledClinic(clinic, folder).fill();
    }

    @AfterAll
    static void close() {
        clinic.close();
    }

    @Test
    void everyPageForPeople_isOnTheWalk() {
        List<PathPattern> pages = pages();
        Set<String> walked = new TreeSet<>(NO_PAGE);
        WALK.forEach(stop -> walked.add(answering(stop, pages)));
        Set<String> answered = new TreeSet<>();
        pages.forEach(page -> answered.add(page.getPatternString()));
        assertEquals(answered, walked);
    }

    private static List<PathPattern> pages() {
        return Endpoints.of(clinic.server).stream()
                .filter(endpoint -> endpoint.startsWith("GET ") && !endpoint.matches("GET /(api/|server).*"))
                .map(endpoint -> PathPatternParser.defaultInstance.parse(endpoint.substring("GET ".length())))
                .toList();
    }

    /** The pattern by which the server answers, the one that says most of those that fit. */
    private static String answering(Stop stop, List<PathPattern> pages) {
        PathContainer path = PathContainer.parsePath(known(stop.address()).replaceFirst("\\?.*", ""));
        return pages.stream()
                .filter(page -> page.matches(path))
                .sorted()
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing answers " + stop))
                .getPatternString();
    }

    @Test
    void noPage_hindersAnybody() throws Exception {
        List<String> found = new ArrayList<>();
        try (Screen screen = Screen.at(URI.create("http://127.0.0.1:" + clinic.server.port()))) {
            String who = NOBODY;
            List<PathPattern> pages = pages();
            Set<String> darkened = new TreeSet<>();
            for (Stop stop : WALK) {
                if (!stop.who().equals(who)) {
                    who = stop.who();
                    screen.driver.manage().deleteAllCookies();
                    screen.signIn(who, Clinic.PASSWORD);
                }
                // on a dark ground the inks alone are others: once a page, and once a reader where a form is refused
                String kind = stop.sends().isPresent() ? "refused to " + who : answering(stop, pages);
                found.addAll(looked(screen, stop, darkened.add(kind)));
            }
        }
        assertEquals(List.of(), found);
    }

    /** What hinders on a page, by ground. */
    private static List<String> looked(Screen screen, Stop stop, boolean dark) throws Exception {
        screen.open(known(stop.address()));
        if (stop.sends().isPresent()) {
            screen.sendEmpty(known(stop.sends().get()));
        }
        screen.unfold();
        List<String> found = new ArrayList<>();
        String text = screen.text();
        if (!text.contains(known(stop.shows()))) {
            found.add(stop + " shows instead: " + text.substring(0, Math.min(text.length(), MOST_TOLD)));
        }
        screen.hindrances().forEach(hindrance -> found.add(stop.address() + ": " + hindrance));
        if (dark) {
            screen.emulate("screen", "dark");
            screen.faintInks().forEach(hindrance -> found.add(stop.address() + ", on dark: " + hindrance));
            screen.emulate("screen", "light");
        }
        return found;
    }

    private static String known(String text) {
        String known = text;
        for (Map.Entry<String, String> place : places.entrySet()) {
            known = known.replace("{" + place.getKey() + "}", place.getValue());
        }
        return known;
    }
}
