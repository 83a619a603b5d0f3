package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import com.nimbusds.jose.JOSEObjectType;
import com.nimbusds.jose.JWSAlgorithm;
import com.nimbusds.jose.JWSHeader;
import com.nimbusds.jose.crypto.MACSigner;
import com.nimbusds.jose.jwk.JWK;
import com.nimbusds.jose.jwk.OctetSequenceKey;
import com.nimbusds.jwt.JWTClaimsSet;
import com.nimbusds.jwt.SignedJWT;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slf4j.LoggerFactory;

/**
 * Every way known to us of getting in without being who one says one is (RFC 8725, the best practice page of CDS Hooks, and
 * some more), each refused with the same bytes as a call without any token.
 */
class TokenAttackTest {
    private static final String PATH = "/cds-services";
    private static final String AUDIENCE = Served.BASE + PATH;
    private static final Instant NOW = Served.NOW;

    private static KeyServer keys;
    private static Served served;
    private static HttpResponse<String> refusal;
    private static Map<String, List<String>> attacks;

    @BeforeAll
    static void start() throws Exception {
        keys = KeyServer.of(Keys.published(Keys.CURVED, Keys.RSA, Keys.OTHER_CURVE));
        served = Served.with("recordSystems:\n  site: knowledge/demo/fhir/site.yaml\n  baseAddress: " + Served.BASE
                + "\n  callers:\n"
                + "  - { name: ward-7, issuer: \"" + Token.ISSUER + "\", tenant: east, keyAddresses: [\""
                + keys.at("/keys") + "\"] }\n"
                + "  - { name: moved, issuer: moved, keyAddresses: [\"" + keys.at("/moved") + "\"] }\n"
                + "  - { name: huge, issuer: huge, keyAddresses: [\"" + keys.at("/huge") + "\"] }\n"
                + "  - { name: never, issuer: never, keyAddresses: [\"" + keys.at("/never") + "\"] }\n"
                + "  - { name: known, issuer: known, keys: '" + Keys.published(Keys.CURVED) + "' }\n");
        refusal = served.get(PATH);
        attacks = table();
    }

    @AfterAll
    static void stop() {
        served.close();
        keys.close();
    }

    private static Token sound() {
        return Token.sound(AUDIENCE, NOW).says(claims -> claims.claim("tenant", "east"));
    }

    private static Token head(UnaryOperator<JWSHeader.Builder> change) {
        return sound().head(change);
    }

    private static Token says(UnaryOperator<JWTClaimsSet.Builder> change) {
        return sound().says(change);
    }

    private static Date in(Duration time) {
        return Date.from(NOW.plus(time));
    }

    @Test
    void soundTokens_areLetIn() {
        assertEquals(200, with(sound().signed()).statusCode());
        int fetched = keys.asked();
        assertEquals(
                200, with(sound().by(Keys.RSA, JWSAlgorithm.RS384).signed()).statusCode());
        assertEquals(
                200,
                with(head(one -> one.jwkURL(URI.create(keys.at("/keys")))).signed())
                        .statusCode());
        assertEquals(
                200, with(says(one -> one.audience(List.of(AUDIENCE))).signed()).statusCode());
        assertEquals(200, with(head(one -> one.type(null)).signed()).statusCode());
        Token known = Token.sound(AUDIENCE, NOW).says(claims -> claims.issuer("known"));
        assertEquals(200, with(known.signed()).statusCode());
        assertEquals(fetched, keys.asked(), "the keys are kept");
    }

    static Stream<String> attacks() {
        return attacks.keySet().stream();
    }

    /** What is wrong, and the values of the header Authorization that are sent. */
    private static Map<String, List<String>> table() throws Exception {
        Map<String, List<String>> table = new TreeMap<>();
        ofSignatures(table);
        ofClaims(table);
        ofHeaders(table);
        ofForm(table);
        return table;
    }

    private static void ofSignatures(Map<String, List<String>> table) throws Exception {
        JWTClaimsSet claims = SignedJWT.parse(sound().signed()).getJWTClaimsSet();
        token(table, "algorithm none", sound().withoutSignature());
        String sound = sound().signed();
        token(table, "signature cut off", sound.substring(0, sound.lastIndexOf('.') + 1));
        token(
                table,
                "signature of another token",
                sound.substring(0, sound.lastIndexOf('.'))
                        + says(one -> one.claim("x", 1)).signed().replaceAll(".*\\.", "."));
        token(table, "public key as a shared secret", sound().sharedSecret());
        token(
                table,
                "published set as a shared secret",
                sharedSecret(Keys.published(Keys.CURVED).getBytes(StandardCharsets.UTF_8), claims));
        token(
                table,
                "key of somebody else",
                sound().by(Keys.STRANGE, JWSAlgorithm.ES384).signed());
        token(
                table,
                "another curve",
                sound().by(Keys.OTHER_CURVE, JWSAlgorithm.ES256).signed());
        token(table, "another hash", sound().by(Keys.RSA, JWSAlgorithm.RS256).signed());
        token(table, "another padding", sound().by(Keys.RSA, JWSAlgorithm.PS384).signed());
        token(table, "payload changed", changedPayload(sound));
        token(
                table,
                "signature of noughts",
                sound.substring(0, sound.lastIndexOf('.') + 1)
                        + Base64.getUrlEncoder().withoutPadding().encodeToString(new byte[96]));
    }

    private static void ofClaims(Map<String, List<String>> table) {
        token(table, "no audience", says(one -> one.audience((String) null)).signed());
        token(
                table,
                "audience elsewhere",
                says(one -> one.audience("https://elsewhere.example" + PATH)).signed());
        token(
                table,
                "audience without the path",
                says(one -> one.audience(Served.BASE)).signed());
        token(
                table,
                "audience of another service",
                says(one -> one.audience(AUDIENCE + "/vein-closure")).signed());
        token(
                table,
                "several audiences",
                says(one -> one.audience(List.of(AUDIENCE, "x"))).signed());
        token(
                table,
                "ended",
                says(one -> one.issueTime(in(Duration.ofMinutes(-9))).expirationTime(in(Duration.ofSeconds(-61))))
                        .signed());
        token(table, "no end", says(one -> one.expirationTime(null)).signed());
        token(
                table,
                "end far away",
                says(one -> one.expirationTime(in(Duration.ofMinutes(61)))).signed());
        token(
                table,
                "end beyond reason",
                says(one -> one.claim("exp", Long.MAX_VALUE)).signed());
        token(table, "end is a word", says(one -> one.claim("exp", "tomorrow")).signed());
        token(
                table,
                "not yet valid",
                says(one -> one.notBeforeTime(in(Duration.ofSeconds(61)))).signed());
        token(
                table,
                "made in the future",
                says(one -> one.issueTime(in(Duration.ofSeconds(61)))).signed());
        token(
                table,
                "made long ago",
                says(one -> one.issueTime(in(Duration.ofMinutes(-62)))).signed());
        token(table, "not said when made", says(one -> one.issueTime(null)).signed());
        token(table, "no name of its own", says(one -> one.jwtID(null)).signed());
        token(table, "empty name of its own", says(one -> one.jwtID("")).signed());
        token(
                table,
                "very long name of its own",
                says(one -> one.jwtID("x".repeat(201))).signed());
        token(
                table,
                "another issuer",
                says(one -> one.issuer("https://somebody.example")).signed());
        token(
                table,
                "issuer in capitals",
                says(one -> one.issuer(Token.ISSUER.toUpperCase())).signed());
        token(
                table,
                "issuer with a slash",
                says(one -> one.issuer(Token.ISSUER + "/")).signed());
        token(table, "no issuer", says(one -> one.issuer(null)).signed());
        token(table, "another tenant", says(one -> one.claim("tenant", "west")).signed());
        token(table, "no tenant", says(one -> one.claim("tenant", null)).signed());
        token(
                table,
                "tenant is a list",
                says(one -> one.claim("tenant", List.of("east"))).signed());
        token(table, "keys behind a redirect", of("moved"));
        token(table, "far too many keys", of("huge"));
        token(table, "keys that never come", of("never"));
    }

    private static String of(String issuer) {
        return Token.sound(AUDIENCE, NOW).says(claims -> claims.issuer(issuer)).signed();
    }

    private static void ofHeaders(Map<String, List<String>> table) throws Exception {
        JWK strange = Keys.STRANGE.toPublicJWK();
        token(table, "no key named", head(one -> one.keyID(null)).signed());
        token(table, "unknown key named", head(one -> one.keyID("k9")).signed());
        token(
                table,
                "path as a key's name",
                head(one -> one.keyID("../../dev/null")).signed());
        token(
                table,
                "keys elsewhere",
                head(one -> one.jwkURL(URI.create("https://evil.example/keys"))).signed());
        token(
                table,
                "keys at another path",
                head(one -> one.jwkURL(URI.create(keys.at("/keys?x")))).signed());
        token(
                table,
                "keys elsewhere for one whose keys are known",
                Token.sound(AUDIENCE, NOW)
                        .says(claims -> claims.issuer("known"))
                        .head(one -> one.jwkURL(URI.create(keys.at("/keys"))))
                        .signed());
        token(
                table,
                "key in the token",
                sound().by(Keys.STRANGE, JWSAlgorithm.ES384)
                        .head(one -> one.jwk(strange))
                        .signed());
        token(
                table,
                "right key in the token",
                head(one -> one.jwk(Keys.CURVED.toPublicJWK())).signed());
        token(
                table,
                "certificate elsewhere",
                head(one -> one.x509CertURL(URI.create(keys.at("/keys")))).signed());
        token(
                table,
                "something to be understood",
                head(one -> one.criticalParams(Set.of("exp")).customParam("exp", 1))
                        .signed());
        token(
                table,
                "payload not encoded",
                head(one -> one.base64URLEncodePayload(true).criticalParams(Set.of("b64")))
                        .signed());
        token(
                table,
                "type of an access token",
                head(one -> one.type(new JOSEObjectType("at+jwt"))).signed());
        token(
                table,
                "something nobody asked for",
                head(one -> one.customParam("x", "y")).signed());
    }

    private static void ofForm(Map<String, List<String>> table) {
        String sound = sound().signed();
        table.put("two headers", List.of("Bearer " + sound().signed(), "Bearer " + sound().signed()));
        table.put("two headers, one empty", List.of("Bearer " + sound().signed(), ""));
        table.put("another scheme", List.of("Basic " + sound().signed()));
        table.put("no scheme", List.of(sound().signed()));
        table.put("two tokens in a header", List.of("Bearer " + sound().signed() + ", Bearer " + sound().signed()));
        token(table, "nothing", "");
        token(table, "dots", "...");
        token(table, "nonsense", "not a token at all");
        token(table, "five parts", sound + ".x.y");
        token(
                table,
                "huge",
                head(one -> one).says(one -> one.claim("x", "y".repeat(4_000))).signed());
        token(
                table,
                "deep",
                Base64.getUrlEncoder().encodeToString("[".repeat(2_000).getBytes()) + ".e30.e30");
        token(table, "claims are a list", "eyJhbGciOiJFUzM4NCIsImtpZCI6ImsxIn0.W10.e30");
    }

    private static void token(Map<String, List<String>> table, String name, String token) {
        table.put(name, List.of("Bearer " + token));
    }

    private static String sharedSecret(byte[] secret, JWTClaimsSet claims) throws Exception {
        SignedJWT jwt = new SignedJWT(
                new JWSHeader.Builder(JWSAlgorithm.HS256).keyID("k1").build(), claims);
        jwt.sign(new MACSigner(new OctetSequenceKey.Builder(secret).build().toByteArray()));
        return jwt.serialize();
    }

    private static String changedPayload(String token) {
        String[] parts = token.split("\\.");
        String payload = new String(Base64.getUrlDecoder().decode(parts[1]), StandardCharsets.UTF_8);
        String other = payload.replace("\"tenant\":\"east\"", "\"tenant\":\"east\",\"role\":\"all\"");
        assertFalse(payload.equals(other));
        return parts[0] + "." + Base64.getUrlEncoder().withoutPadding().encodeToString(other.getBytes()) + "."
                + parts[2];
    }

    @ParameterizedTest
    @MethodSource("attacks")
    void isRefused(String attack) {
        HttpRequest.Builder request = served.at(PATH);
        attacks.get(attack).forEach(value -> request.header("Authorization", value));
        same(served.send(request));
    }

    @Test
    void aTokenInTheAddressOrTheBody_isNone() {
        same(served.get(PATH + "?access_token=" + sound().signed()));
        same(served.get(PATH + "?token=" + sound().signed()));
        same(served.send(served.at(PATH).header("Cookie", "access_token=" + sound().signed())));
        same(served.send(served.at(PATH).header("X-Forwarded-Authorization", "Bearer " + sound().signed())));
    }

    @Test
    void aTokenUsedBefore_isRefused() {
        String token = sound().signed();
        assertEquals(200, with(token).statusCode());
        same(with(token));
        Token sameName = says(claims -> claims.jwtID("same"));
        assertEquals(200, with(sameName.signed()).statusCode());
        same(with(sameName.says(claims -> claims.claim("x", 1)).signed()));
    }

    @Test
    void ofManyThatUseATokenAtOnce_oneIsLetIn() throws Exception {
        String token = sound().signed();
        ExecutorService pool = Executors.newFixedThreadPool(16);
        try {
            List<Callable<Integer>> calls = new ArrayList<>();
            for (int i = 0; i < 16; i++) {
                calls.add(() -> with(token).statusCode());
            }
            List<Integer> answers = new ArrayList<>();
            for (Future<Integer> future : pool.invokeAll(calls)) {
                answers.add(future.get());
            }
            assertEquals(1, answers.stream().filter(status -> status == 200).count(), answers::toString);
            assertEquals(15, answers.stream().filter(status -> status == 401).count(), answers::toString);
        } finally {
            pool.shutdownNow();
        }
    }

    /** Or a token could be used up by somebody who cannot sign. */
    @Test
    void aTokenThatIsNotSigned_usesNoNameUp() {
        same(with(says(claims -> claims.jwtID("mine"))
                .by(Keys.STRANGE, JWSAlgorithm.ES384)
                .signed()));
        assertEquals(200, with(says(claims -> claims.jwtID("mine")).signed()).statusCode());
    }

    @Test
    void theReason_standsInTheLog_andNothingOfTheToken() {
        Logger logger = (Logger) LoggerFactory.getLogger(SignedCalls.class);
        ListAppender<ILoggingEvent> seen = new ListAppender<>();
        seen.start();
        logger.addAppender(seen);
        logger.setLevel(Level.INFO);
        String token = says(claims -> claims.issuer("https://planted.example")).signed();
        same(with(token));
        logger.detachAppender(seen);
        String log = seen.list.stream().map(ILoggingEvent::getFormattedMessage).collect(Collectors.joining());
        assertEquals("A call was not let in: the token is of an issuer the site does not know", log);
        assertFalse(log.contains("planted") || log.contains(token.substring(0, 20)));
    }

    private static HttpResponse<String> with(String token) {
        return served.send(served.at(PATH).header("Authorization", "Bearer " + token));
    }

    private static void same(HttpResponse<String> answer) {
        assertEquals(401, answer.statusCode());
        assertEquals(refusal.body(), answer.body());
        assertEquals(heads(refusal), heads(answer));
        assertTrue(answer.body().contains("a valid token is needed"), answer.body());
    }

    private static Map<String, List<String>> heads(HttpResponse<String> answer) {
        Map<String, List<String>> heads = new TreeMap<>(answer.headers().map());
        heads.remove("date");
        return heads;
    }
}
