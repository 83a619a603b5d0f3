package org.tunica.governance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.Sha256;
import org.tunica.knowledge.Bundle;
import org.tunica.signing.KeyRing;
import org.tunica.signing.SigningRole;

/** A release in the hands of somebody who can edit files. */
class ReleaseCheckTest {
    private final Draft draft = new Draft();

    @TempDir
    private Path folder;

    @Test
    void aSignedRelease_isVerifiedFromItsFileAndTheKeysAlone() throws IOException {
        Path zip = write(new SignedRelease(draft.files, draft.signed()).archive());
        SignedRelease read = SignedRelease.in(zip);
        KeyRing keys = KeyRing.read("keys", draft.ring().toJson().getBytes(StandardCharsets.UTF_8));
        VerifiedRelease verified = ReleaseCheck.verified(read.files(), read.signatures(), keys);
        assertEquals("1.0.0", verified.manifest().version());
        assertEquals(Draft.bundle().digest(), verified.bundle().digest());
        assertEquals(verified.bundle().texts(), Bundle.inArchive(zip).texts(), "it is a bundle like any other");
    }

    @Test
    void theSameRelease_isTheSameBytes() {
        byte[] archive = new SignedRelease(draft.files, draft.signed()).archive();
        assertArrayEquals(archive, new SignedRelease(Draft.built("1.0.0", List.of("alma")), draft.signed()).archive());
        ReleaseFiles unpacked = ReleaseFiles.unpacked(draft.files.packed());
        assertEquals(draft.files.texts(), unpacked.texts());
    }

    /** Every file, and one byte in the middle of each. */
    @Test
    void aChangedByteOfAnyFile_isFoundAndNamed() {
        for (String path : draft.files.texts().keySet()) {
            TreeMap<String, String> texts = new TreeMap<>(draft.files.texts());
            String text = texts.get(path);
            int middle = text.length() / 2;
            texts.put(path, text.substring(0, middle) + "~" + text.substring(middle + 1));
            FaultyInput fault = refused(texts);
            assertTrue(fault.getMessage().contains(path) || path.equals(ReleaseFiles.MANIFEST), fault::getMessage);
        }
    }

    @Test
    void aManifestMadeToFit_voidsEverySignature() {
        TreeMap<String, String> texts = new TreeMap<>(draft.files.texts());
        texts.put("knowledge/limits/heat.yaml", "gap: 1 mm é\n");
        texts.remove(ReleaseFiles.MANIFEST);
        Bundle changed = Bundle.of(Map.of(
                "rules/2-exclusions/skin.rule", "rule\n",
                "rules/changes/0001-first.yaml", "number: \"0001\"\n",
                "knowledge/limits/heat.yaml", "gap: 1 mm é\n"));
        Manifest old = draft.files.manifest();
        texts.put(
                ReleaseFiles.MANIFEST,
                old.text()
                        .replace(old.rules(), changed.digest())
                        .replace(Sha256.of("gap: 10 mm é\n"), Sha256.of("gap: 1 mm é\n")));
        FaultyInput fault = refused(texts);
        assertTrue(
                fault.getMessage().contains("clinical lead clara: was given for other bytes than these"),
                fault::getMessage);
        assertTrue(fault.getMessage().contains("no safety officer has signed it"), fault::getMessage);
    }

    @Test
    void aFilePutInOrRemoved_isFoundAndNamed() {
        TreeMap<String, String> more = new TreeMap<>(draft.files.texts());
        more.put("rules/2-exclusions/other.rule", "rule\n");
        assertTrue(refused(more).getMessage().contains("other.rule: was put in"));
        TreeMap<String, String> less = new TreeMap<>(draft.files.texts());
        less.remove("rules/2-exclusions/skin.rule");
        assertTrue(refused(less).getMessage().contains("skin.rule: was removed"));
        TreeMap<String, String> none = new TreeMap<>(draft.files.texts());
        none.remove(ReleaseFiles.MANIFEST);
        assertTrue(refused(none).getMessage().contains("manifest.json: is missing"));
    }

    @Test
    void anUnsignedOrHalfSignedRelease_isRefusedWithWhatIsMissing() {
        Signatures half = new Signatures(List.of(draft.acknowledged(), draft.sign("clara", SigningRole.CLINICAL_LEAD)));
        FaultyInput fault =
                assertThrows(FaultyInput.class, () -> ReleaseCheck.verified(draft.files, half, draft.ring()));
        assertEquals("release 1.0.0: 1 fault\n  release 1.0.0: no safety officer has signed it", fault.getMessage());
        assertThrows(
                FaultyInput.class, () -> ReleaseCheck.verified(draft.files, new Signatures(List.of()), draft.ring()));
    }

    @Test
    void aReleaseThatRanOut_isRefusedFromTheDayAfter() {
        VerifiedRelease release = ReleaseCheck.verified(draft.files, draft.signed(), draft.ring());
        release.mustBeEffective(Instant.parse("2028-03-01T23:59:59Z"));
        FaultyInput fault =
                assertThrows(FaultyInput.class, () -> release.mustBeEffective(Instant.parse("2028-03-02T00:00:00Z")));
        assertTrue(fault.getMessage().contains("until 2028-03-01 and has run out"), fault::getMessage);
    }

    @Test
    void aReplayOfOtherRules_isNotTaken() {
        ReplayReport other = Draft.replay(Bundle.of(Map.of("rules/a.rule", "", "knowledge/a.yaml", "")));
        FaultyInput fault = assertThrows(
                FaultyInput.class, () -> other.mustBeOf(Draft.bundle().digest()));
        assertTrue(fault.getMessage().contains("the replay was made of other rules than these"), fault::getMessage);
        assertThrows(
                FaultyInput.class,
                () -> new ReplayReport("{}").mustBeOf(Draft.bundle().digest()));
    }

    /** The two tellings of an archive, names that lead elsewhere, bytes that are no text: as with any bundle. */
    @ParameterizedTest
    @ValueSource(strings = {"../manifest.json", "rules/../x.rule", "/etc/x", "a b.txt", "MANIFEST.json"})
    void aHostileName_isRefused(String name) throws IOException {
        TreeMap<String, byte[]> entries = new TreeMap<>();
        draft.files.texts().forEach((path, text) -> entries.put(path, text.getBytes(StandardCharsets.UTF_8)));
        entries.put(name, new byte[] {'x'});
        assertThrows(FaultyInput.class, () -> SignedRelease.in(write(zipped(entries))));
    }

    @Test
    void anArchiveCutShortOrOfNoText_isRefused() throws IOException {
        byte[] whole = new SignedRelease(draft.files, draft.signed()).archive();
        assertThrows(FaultyInput.class, () -> SignedRelease.in(write(Arrays.copyOf(whole, whole.length / 2))));
        assertThrows(FaultyInput.class, () -> SignedRelease.in(write(new byte[] {1, 2, 3})));
        assertThrows(FaultyInput.class, () -> SignedRelease.in(folder.resolve("nothing.zip")));
        assertThrows(
                FaultyInput.class,
                () -> SignedRelease.in(write(zipped(new TreeMap<>(Map.of("a.txt", new byte[] {(byte) 0xff}))))));
    }

    private FaultyInput refused(Map<String, String> texts) {
        return assertThrows(
                FaultyInput.class, () -> ReleaseCheck.verified(ReleaseFiles.of(texts), draft.signed(), draft.ring()));
    }

    private Path write(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("release.zip"), bytes);
    }

    private static byte[] zipped(TreeMap<String, byte[]> entries) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue());
                zip.closeEntry();
            }
        }
        return bytes.toByteArray();
    }
}
