package org.tunica.web;

import java.net.URI;
import java.nio.file.*;
import java.time.Duration;
import java.util.*;
import org.openqa.selenium.*;
import org.tunica.*;
import org.tunica.releases.FirstRelease;
import org.tunica.signing.*;
import org.tunica.store.*;

public class ScratchLook {
    static Path out = Path.of("/tmp/looks");
    static Screen s;

    static void shot(String name) throws Exception {
        for (int w : new int[] {1280, 820}) {
            s.driver.executeCdpCommand(
                    "Emulation.setDeviceMetricsOverride",
                    Map.of("width", w, "height", 1000, "deviceScaleFactor", 1, "mobile", false));
            for (String sch : w == 1280 ? List.of("light", "dark") : List.of("light")) {
                s.emulate("screen", sch);
                Map<String, Object> r = s.driver.executeCdpCommand(
                        "Page.captureScreenshot",
                        Map.of("format", "png", "captureBeyondViewport", true, "clip", clip(w)));
                Files.write(
                        out.resolve(name + "-" + w + "-" + sch + ".png"),
                        Base64.getDecoder().decode((String) r.get("data")));
                Object over = s.driver.executeScript(
                        "return document.documentElement.scrollWidth-document.documentElement.clientWidth;");
                if (((Number) over).intValue() > 0) System.err.println("OVERFLOW " + name + " " + w + " " + over);
            }
        }
        s.emulate("", "light");
        Map<String, Object> r = s.driver.executeCdpCommand(
                "Page.printToPDF", Map.of("printBackground", false, "paperWidth", 8.27, "paperHeight", 11.69));
        Files.write(out.resolve(name + ".pdf"), Base64.getDecoder().decode((String) r.get("data")));
        try {
            List<String> h = s.hindrances();
            if (!h.isEmpty()) System.err.println("AXE " + name + " " + h);
        } catch (Exception e) {
            System.err.println("axe failed " + name + " " + e.getMessage().split("\n")[0]);
        }
    }

    static Map<String, Object> clip(int w) {
        Number h = (Number) s.driver.executeScript("return document.documentElement.scrollHeight;");
        return Map.of("x", 0, "y", 0, "width", w, "height", Math.min(h.intValue(), 4200), "scale", 1);
    }

    static void as(String n) {
        s.driver.manage().deleteAllCookies();
        s.signIn(n, Clinic.PASSWORD);
    }

    public static void main(String[] a) throws Exception {
        Files.createDirectories(out);
        Clinic c = Clinic.open(Files.createTempDirectory("look"));
        c.user("wren", Role.SPECIALIST);
        c.user("robin", Role.MEETING_MEMBER);
        c.user("anna", Role.RULE_AUTHOR);
        c.user("rosa", Role.SPECIALIST);
        c.user("clara", Role.CLINICAL_LEAD);
        c.user("stefan", Role.SAFETY_OFFICER);
        FirstRelease first = FirstRelease.inForce(c.store, c.clock);
        c.clock.move(Duration.ofHours(1));
        c.keep("look-1", "straight-thigh-trunk");
        c.keep("look-2", "both-legs-many-segments");
        c.keep(new Actor("demo:invented"), "look-3", "large-trunk-anticoagulated", 0);
        c.keep("look-4", "recurrent-groin-channels");
        Browser b = c.signedIn("wren");
        b.whole("/cases/look-1");
        b.whole("/cases/look-2");
        b.fillIn("/cases/look-1/plan", Map.of());
        b.fillIn("/cases/look-2/plan", Map.of());
        b.fillIn(
                "/cases/look-2/meeting",
                Map.of("question", "Which way first?", "because", "rare-finding", "date", "2026-12-01"));
        b.fillIn(
                "/cases/look-3/meeting",
                Map.of("question", "", "because", "second-opinion-wanted", "date", "2026-12-01"));
        b.fillIn(
                "/cases/look-1/follow-up",
                Map.of(
                        "daysAfter",
                        "7",
                        "segments[0].treatedLengthCm",
                        "38",
                        "segments[0].closure",
                        "adhesive-open-stump",
                        "segments[0].openLengthCm",
                        "0"));
        Files.write(out.resolve("sheet.pdf"), b.bytes("/cases/look-2/sheet").body());
        s = Screen.at(URI.create("http://127.0.0.1:" + c.server.port()));
        s.driver.manage().timeouts().scriptTimeout(Duration.ofSeconds(120));
        as("wren");
        for (String[] p : new String[][] {
            {"advice", "/cases/look-1"},
            {"advice6", "/cases/look-2"},
            {"plan", "/cases/look-2/plan"},
            {"window", "/cases/look-1/window/L1/rf-bipolar-pullback?powerW=11&pullbackSPerCm=7.5"},
            {"refer", "/cases/look-3/meeting"},
            {"queue", "/meeting"},
            {"agenda", "/meeting/agenda/2026-12-01"},
            {"deliver", "/cases/look-2/plan/1/sessions/1/delivered"},
            {"followup", "/cases/look-1/follow-up"},
            {"papers", "/cases/look-1/papers"},
            {"similar", "/cases/look-3/similar/L1"},
            {"new", "/cases/new"}
        }) {
            if (a.length > 0 && !Arrays.asList(a).contains(p[0])) continue;
            s.open(p[1]);
            if (p[0].startsWith("advice"))
                s.driver.executeScript("document.querySelectorAll('.help').forEach((d,i)=>{if(i<2||i==9)d.open=true})");
            shot(p[0]);
        }
        if (a.length == 0 || Arrays.asList(a).contains("gov")) {
            as("clara");
            for (String[] p : new String[][] {
                {"rules", "/governance/rules"},
                {"rule", "/governance/rules/EXC-007"},
                {"due", "/governance/due"},
                {"releases", "/governance/releases"},
                {"release", "/governance/releases/1.0.0"},
                {"feedback", "/governance/feedback"},
                {"changes", "/governance/changes"}
            }) {
                s.open(p[1]);
                shot(p[0]);
            }
            for (WebElement e : s.driver.findElements(By.cssSelector("x"))) {}
            s.open("/governance/releases/1.0.0");
            List<String> ways = new ArrayList<>();
            for (WebElement e : s.driver.findElements(By.cssSelector("a.button"))) ways.add(e.getAttribute("href"));
            System.err.println(ways);
            for (String w : ways) {
                s.driver.get(w);
                shot("act-" + w.replaceAll(".*/", ""));
            }
            as("anna");
            s.open("/governance/changes");
            shot("changes-anna");
        }
        s.close();
        System.exit(0);
    }
}
