package org.tunica.governance;

import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.signing.KeyRing;

/** Verifies a release from nothing but its files, its signatures and the public keys somebody trusts. */
public final class ReleaseCheck {
    private ReleaseCheck() {}

    /**
     * The release, verified.
     *
     * @throws FaultyInput with every reason why it may not be used
     */
    public static VerifiedRelease verified(ReleaseFiles files, Signatures signatures, KeyRing keys) {
        Manifest manifest = intact(files);
        Faults faults = new Faults();
        SignOff.of(manifest, signatures, keys).faults().forEach(fault -> faults.add(fault.place(), fault.says()));
        faults.throwIfAny("release " + manifest.version());
        return new VerifiedRelease(manifest, files.bundle());
    }

    /**
     * The manifest of a release whose files are as it says, signed or not.
     *
     * @throws FaultyInput with every file that was changed, removed or put in
     */
    public static Manifest intact(ReleaseFiles files) {
        Manifest manifest = files.manifest();
        TreeMap<String, String> said = new TreeMap<>();
        manifest.files().forEach(file -> said.put(file.path(), file.sha256()));
        TreeMap<String, String> found = new TreeMap<>();
        files.entries().forEach(file -> found.put(file.path(), file.sha256()));
        Faults faults = new Faults();
        if (said.size() != manifest.files().size()) {
            faults.add(ReleaseFiles.MANIFEST, "names a file twice");
        }
        Set<String> all = new TreeSet<>(said.keySet());
        all.addAll(found.keySet());
        all.stream()
                .filter(path -> !found.getOrDefault(path, "").equals(said.getOrDefault(path, "")))
                .forEach(path -> faults.add(path, why(said.containsKey(path), found.containsKey(path))));
        faults.throwIfAny("release " + manifest.version());
        digests(manifest, files, faults);
        faults.throwIfAny("release " + manifest.version());
        return manifest;
    }

    private static String why(boolean wasSaid, boolean wasFound) {
        if (!wasFound) {
            return "was removed: the manifest names it";
        }
        return wasSaid
                ? "was changed: it has not the digest the manifest names"
                : "was put in: the manifest does not name it";
    }

    private static void digests(Manifest manifest, ReleaseFiles files, Faults faults) {
        if (!files.bundle().digest().equals(manifest.rules())) {
            faults.add(ReleaseFiles.MANIFEST, "its digest of rules and knowledge is of others");
        }
        if (!new ReplayReport(files.text(ReleaseFiles.REPLAY)).digest().equals(manifest.replay())) {
            faults.add(ReleaseFiles.MANIFEST, "its digest of the replay is of another");
        }
    }
}
