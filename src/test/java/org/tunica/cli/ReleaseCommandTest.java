package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import org.tunica.signing.KeyFile;
import org.tunica.signing.Signature;

/** A governance team of invented people at the command line, from the first key to the day a release is rolled back. */
class ReleaseCommandTest extends AtTheCommandLine {
    private static final String CASE = "knowledge/demo/straight-thigh-trunk.json";

    @TempDir
    private Path folder;

    private String data = "";
    private String passphrase = "";

    @BeforeEach
    void place() throws IOException {
        data = folder.resolve("data").toString();
        passphrase = Files.writeString(folder.resolve("passphrase"), "eleven green herons\n")
                .toString();
    }

    @Test
    void aRelease_isBuiltSignedPutInForceAndVerifiedElsewhere() throws IOException {
        person("alma", "rule-author");
        person("rosa", "specialist");
        person("clara", "clinical-lead");
        person("stefan", "safety-officer");
        build("1.0.0");
        assertEquals("Release 1.0.0: draft.", out.lines().findFirst().orElseThrow());
        done("release", "submit", "--data", data, "1.0.0");
        refused("no safety officer has signed it", "release", "verify", exported("before"), "--keys", keys());
        refused(
                "alma is an author of this release",
                "release",
                "acknowledge",
                "--data",
                data,
                "1.0.0",
                "--key",
                key("alma"),
                "--passphrase-file",
                passphrase);
        done("release", "acknowledge", "--data", data, "1.0.0", "--key", key("rosa"), "--passphrase-file", passphrase);
        assertTrue(out.contains("missing: no clinical lead has signed it"), out);
        refused("alma: is no clinical lead", sign("alma", "clinical-lead"));
        done(sign("clara", "clinical-lead"));
        refused("is in review and must be approved before", "release", "activate", "--data", data, "1.0.0");
        done(sign("stefan", "safety-officer"));
        assertTrue(out.contains("purpose sign-off"), out);
        assertTrue(out.endsWith("Release 1.0.0: approved.\n"), out);

        advise();
        assertTrue(out.contains("DRAFT rules"), out);
        assertTrue(err.contains("No release is in force here"), err);
        done("release", "activate", "--data", data, "1.0.0");
        assertTrue(out.contains("active, IN FORCE since"), out);
        advise();
        assertTrue(out.contains("ACTIVE rules 1.0.0, signed"), out);
        assertFalse(out.contains("DRAFT"), out);
        String then = out;
        done("advise", CASE, "--data", data, "--as-of", "1.0.0", "--width", "100");
        assertEquals(then, out);
        assertTrue(err.contains("Release 1.0.0 is the one in force."), err);

        noted();
        String zip = exported("release");
        done("release", "verify", zip, "--keys", keys());
        assertTrue(out.startsWith("Release 1.0.0 holds: "), out);
        assertTrue(out.contains("clara, clinical lead, "), out);
        byte[] bytes = Files.readAllBytes(Path.of(zip));
        bytes[bytes.length / 2] ^= 1;
        Files.write(Path.of(zip), bytes);
        refused("", "release", "verify", zip, "--keys", keys());
        done("release", "show", "--data", data, "1.0.0");
        assertTrue(out.contains("what is new:    gaps to the skin"), out);
        assertTrue(out.contains("written by:     alma"), out);
        done("verify", "--data", data);
        refused("there is no release before 1.0.0", "release", "rollback", "--data", data, "--because", "doubts");
    }

    @Test
    void aSignatureForAServer_isPrintedAndHolds() throws IOException {
        String digest = "sha256:" + "0".repeat(64);
        String key = createKey("rosa");
        refused("digest must be written as", signedElsewhere(key, "none"));
        done(signedElsewhere(key, digest));
        assertTrue(err.contains("purpose acknowledge-replay"), err);
        Faults faults = new Faults();
        Signature signature = Signature.read(
                        new FieldReader(JsonText.parse("signature", out.getBytes(StandardCharsets.UTF_8)), "$", faults))
                .orElseThrow();
        assertEquals("rosa", signature.statement().person());
        String json = Files.readString(Path.of(key));
        assertTrue(signature.holdsUnder(
                KeyFile.read("key", json.getBytes(StandardCharsets.UTF_8)).publicKey()));
    }

    @Test
    void whatIsMissing_isToldBeforeAnythingIsKept() throws IOException {
        person("alma", "rule-author");
        Path replay = Files.writeString(folder.resolve("other.json"), "{\"format\":\"tunica-replay/1\"}");
        refused(
                "$.draft: must be given",
                "release",
                "build",
                "--data",
                data,
                ".",
                "--number",
                "1.0.0",
                "--title",
                "t",
                "--author",
                "alma",
                "--change",
                "0003",
                "--review-by",
                "2099-01-01",
                "--replay",
                replay.toString());
        done("release", "list", "--data", data);
        assertEquals("No release is kept here.\n", out);
        refused("needs --data", "advise", CASE, "--as-of", "1.0.0");
        refused("there is nobody of that name", "key", "add", "--data", data, createKey("nobody"));
        refused(
                "is none of no-longer-used, lost, compromised",
                "key",
                "withdraw",
                "--data",
                data,
                "--person",
                "alma",
                "--key",
                "k1",
                "--because",
                "tired");
        done("key", "withdraw", "--data", data, "--person", "alma", "--key", "k1", "--because", "lost");
        assertTrue(out.contains("Key k1 of alma: may sign as reviewer; withdrawn at 20"), out);
        refused(
                "clinical-lead and safety-officer cannot lie with one person",
                "people",
                "add",
                "--data",
                data,
                "both",
                "--post",
                "clinical-lead",
                "--post",
                "safety-officer");
        done("people", "list", "--data", data);
        assertEquals("alma: rule author, active.\n", out);
    }

    private void person(String name, String post) throws IOException {
        done("people", "add", "--data", data, name, "--post", post);
        done("key", "add", "--data", data, createKey(name));
    }

    private String createKey(String name) {
        done("key", "create", "--person", name, "--to", key(name), "--passphrase-file", passphrase);
        return key(name);
    }

    private String key(String name) {
        return folder.resolve(name + ".json").toString();
    }

    private String keys() throws IOException {
        done("key", "list", "--data", data, "--json");
        return Files.writeString(folder.resolve("keys.json"), out).toString();
    }

    private String exported(String name) {
        String zip = folder.resolve(name + ".zip").toString();
        done("release", "export", "--data", data, "1.0.0", "--to", zip);
        return zip;
    }

    private void build(String version) throws IOException {
        done("replay", "--draft", ".", "--data", data, "--demo", "--json");
        Path replay = Files.writeString(folder.resolve("replay.json"), out);
        done(
                "release",
                "build",
                "--data",
                data,
                ".",
                "--number",
                version,
                "--title",
                "gaps to the skin",
                "--author",
                "alma",
                "--change",
                "0003",
                "--review-by",
                "2099-01-01",
                "--replay",
                replay.toString());
    }

    /** The note of a plan made in force says so where the release is kept, and is a draft anywhere else. */
    private void noted() throws IOException {
        String delivered = "knowledge/demo/delivered/straight-thigh-trunk.json";
        done("plan", CASE, "--data", data, "--json");
        String plan = Files.writeString(folder.resolve("plan.json"), out).toString();
        done("note", plan, delivered, "--data", data);
        assertFalse(out.contains("DRAFT"), out);
        done("note", plan, delivered);
        assertTrue(out.startsWith("DRAFT. "), out);
        done("rules", "explain", CASE, "--option", "L1/laser-1470-radial", "--data", data, "--width", "100");
        assertTrue(out.contains("ACTIVE rules 1.0.0"), out);
        done("window", CASE, "--segment", "L1", "--technique", "laser-1470-radial", "--data", data);
        assertTrue(out.contains("ACTIVE knowledge 1.0.0"), out);
        assertFalse(out.contains("DRAFT"), out);
    }

    private String[] sign(String person, String post) {
        return new String[] {
            "release",
            "sign",
            "--data",
            data,
            "1.0.0",
            "--as",
            post,
            "--key",
            key(person),
            "--passphrase-file",
            passphrase
        };
    }

    private String[] signedElsewhere(String key, String digest) {
        return new String[] {
            "key",
            "sign",
            "--key",
            key,
            "--release",
            "1.0.0",
            "--as",
            "reviewer",
            "--digest",
            digest,
            "--passphrase-file",
            passphrase
        };
    }

    private void advise() {
        done("advise", CASE, "--data", data, "--width", "100");
    }

    private void done(String... args) {
        run(args);
        assertEquals(0, code, err);
    }

    private void refused(String says, String... args) {
        run(args);
        assertEquals(2, code, out);
        assertTrue(err.contains(says), err);
    }
}
