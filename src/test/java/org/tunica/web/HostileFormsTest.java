package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.RequestMappingInfoHandlerMapping;
import org.tunica.store.Role;

/**
 * Whatever somebody who has signed in sends to whichever address with whichever fields, the server does not fail, tells
 * nothing of its insides, and gives no text back as markup. Addresses and their fields are those the server knows of itself.
 */
class HostileFormsTest {
    private static final String SCRIPT = "<script>alert(1)</script>";

    /** What ends the session, or takes long by design. */
    private static final Set<String> NOT_ASKED =
            Set.of("POST /sign-out", "POST /governance/changes/{number}/replay", "GET /results/pdf");

    private static final List<String> VALUES = List.of(
            "",
            " ",
            "0",
            "1",
            "-1",
            "2",
            "99999999999999999999999999",
            "1e9",
            "NaN",
            "0x10",
            "2024",
            "2026-12-01",
            "2026-13-45",
            "yes",
            "L1",
            "L1,L1",
            "laser-1470-radial",
            "foam-polidocanol",
            "great-saphenous",
            "heat-open-part",
            "AK",
            "A title",
            "site-a1",
            "p-000000000000000000000000",
            "sha256:" + "0".repeat(64),
            "EXC-007",
            "heat.skin-gap.min",
            "1.0.0",
            "rules/2-exclusions/heat-near-skin.rule",
            "../../../../etc/passwd",
            "/etc/passwd",
            "C:\\windows",
            "a\nb",
            "a\u0000b",
            "\ud800",
            "\u00e9\u4e2d\ud83d\ude00",
            "\u202etxt",
            SCRIPT,
            "\"><img src=x onerror=alert(1)>",
            "' or 1=1 --",
            "${7*7}#{7*7}",
            "%s%n%00",
            "null",
            "[]",
            "{\"a\":",
            "{\"format\":\"tunica-case/1\"}",
            "{\"resourceType\":\"Bundle\"}",
            "x".repeat(5_000));

    /** Fields of forms whose names only the page knows. */
    private static final List<String> FIELDS = List.of(
            "caseRef",
            "seen",
            "step",
            "add",
            "drop",
            "daysAfter",
            "confirmed-0",
            "patient.ageYears",
            "patient.weightKg",
            "patient.conditions",
            "limbs[0].side",
            "limbs[0].segments[0].ref",
            "limbs[0].segments[0].vein",
            "limbs[0].segments[0].wallThicknessMm",
            "limbs[99].segments[99].ref",
            "segments[0].technique",
            "segments[0].treatedLengthCm",
            "segments[0].closure",
            "segments[0].heat.powerW",
            "segments[-1].technique",
            "segments[99999].technique",
            "1.comparison",
            "1.limit",
            "decision-L1",
            "reason-L1",
            "dissent-who-0",
            "agreed",
            "owner",
            "]][[",
            "");

    private static final Map<Integer, Integer> STATUSES = new TreeMap<>();

    @TempDir
    private static Path folder;

    private static Clinic clinic;
    private static Browser browser;
    private static String token = "";
    private static List<Target> targets = List.of();

    /** @param all whether it takes whatever fields there are */
    private record Target(String method, String pattern, Set<String> fields, boolean all) {}

    @BeforeAll
    static void open() throws Exception {
        Limits limits = ServerSettings.read(
                        "server.yaml",
                        ("format: tunica-server/1\n"
                                        + "limits: { perAddressPerMinute: 1000000, perCallerPerMinute: 1000000 }\n")
                                .getBytes(StandardCharsets.UTF_8))
                .limits();
        clinic = Clinic.at(folder.toString(), settings -> settings.with(limits));
        clinic.user("max", Role.values());
        // without a wall there is no heat to compute, which would take all the time there is
        clinic.keep("hostile-1", "missing-wall-thickness");
        browser = clinic.signedIn("max");
        token = browser.token();
        browser.form("/cases/hostile-1/plan", token, Map.of());
        targets = targets();
    }

    @AfterAll
    static void close() {
        assertEquals(List.of(), clinic.store.audit().verify().faults());
        clinic.close();
        for (int status : new int[] {200, 303, 400, 404, 422}) {
            assertTrue(STATUSES.containsKey(status), STATUSES::toString);
        }
    }

    @Test
    void aSlice() throws Exception {
        for (int seed = 0; seed < 1_000; seed++) {
            ask(seed);
        }
    }

    @Test
    @Tag("deep")
    void aCampaign() throws Exception {
        for (int seed = 0; seed < 50_000; seed++) {
            ask(1_000_000 + seed);
        }
    }

    private static void ask(int seed) throws Exception {
        Random random = new Random(seed);
        Target target = targets.get(random.nextInt(targets.size()));
        String fields = fields(target, random);
        boolean get = target.method().equals("GET");
        String address = address(target.pattern(), random) + (get && !fields.isEmpty() ? "?" + fields : "");
        HttpRequest.Builder request = browser.at(address).header("Accept", "text/html,application/json");
        if (!get) {
            request.header("Content-Type", "application/x-www-form-urlencoded")
                    .header("X-CSRF-TOKEN", token)
                    .method(target.method(), HttpRequest.BodyPublishers.ofString(fields));
        }
        HttpResponse<String> answer = browser.send(request);
        String shown = "seed " + seed + ": " + target.method() + " " + address + "\n" + fields + "\n=> "
                + answer.statusCode() + " " + answer.body();
        STATUSES.merge(answer.statusCode(), 1, Integer::sum);
        assertTrue(answer.statusCode() < 500, shown);
        String type = answer.headers().firstValue("Content-Type").orElse("");
        assertFalse(type.startsWith("text/html") && answer.body().contains(SCRIPT), shown);
        assertFalse(
                answer.body().matches("(?s).*(java\\.[a-z]+\\.|org\\.(tunica|springframework|sqlite)\\.).*"), shown);
    }

    private static String address(String pattern, Random random) {
        Matcher names = Pattern.compile("\\{(\\w+)}").matcher(pattern);
        return names.replaceAll(name -> Matcher.quoteReplacement(
                encoded(name.group(1).equals("caseRef") && random.nextInt(4) > 0 ? "hostile-1" : value(random))));
    }

    private static String fields(Target target, Random random) {
        List<String> fields = new ArrayList<>();
        for (String name : target.fields()) {
            for (int times = random.nextInt(3); times > 0; times--) {
                fields.add(encoded(name) + "=" + encoded(value(random)));
            }
        }
        for (int more = random.nextInt(target.all() ? 12 : 2); more > 0; more--) {
            fields.add(encoded(FIELDS.get(random.nextInt(FIELDS.size()))) + "=" + encoded(value(random)));
        }
        return String.join("&", fields);
    }

    private static String value(Random random) {
        return VALUES.get(random.nextInt(VALUES.size()));
    }

    private static String encoded(String text) {
        // an empty part of a path would be another address
        return text.isEmpty()
                ? "%20"
                : URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }

    private static List<Target> targets() {
        List<Target> found = new ArrayList<>();
        for (RequestMappingInfoHandlerMapping mapping : clinic.server.mappings()) {
            mapping.getHandlerMethods().forEach((info, handler) -> found.addAll(targets(info, handler)));
        }
        found.removeIf(target -> target.pattern().matches("/(cds-services|fhir).*")
                || NOT_ASKED.contains(target.method() + " " + target.pattern()));
        assertTrue(found.size() > 80, found::toString);
        return found;
    }

    private static List<Target> targets(RequestMappingInfo info, HandlerMethod handler) {
        Set<String> fields = new TreeSet<>();
        boolean[] all = {false};
        Arrays.stream(handler.getMethodParameters()).forEach(parameter -> {
            RequestParam asked = parameter.getParameterAnnotation(RequestParam.class);
            if (asked != null && Map.class.isAssignableFrom(parameter.getParameterType())) {
                all[0] = true;
            } else if (asked != null) {
                parameter.initParameterNameDiscovery(new org.springframework.core.DefaultParameterNameDiscoverer());
                fields.add(asked.value().isEmpty() ? parameter.getParameterName() : asked.value());
            }
        });
        if (info.getPatternValues().stream().anyMatch(pattern -> pattern.startsWith("/results"))) {
            fields.addAll(List.of("site", "technique", "against", "from", "to", "invented"));
        }
        List<Target> targets = new ArrayList<>();
        info.getMethodsCondition()
                .getMethods()
                .forEach(method -> info.getPatternValues()
                        .forEach(pattern -> targets.add(new Target(method.name(), pattern, fields, all[0]))));
        return targets;
    }
}
