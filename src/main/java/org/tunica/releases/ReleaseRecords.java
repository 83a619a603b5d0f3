package org.tunica.releases;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import org.tunica.governance.Manifest;
import org.tunica.governance.ReleaseCheck;
import org.tunica.governance.ReleaseFiles;
import org.tunica.governance.SignOff;
import org.tunica.governance.Signatures;
import org.tunica.governance.SignedRelease;
import org.tunica.governance.Step;
import org.tunica.governance.Story;
import org.tunica.governance.Timeline;
import org.tunica.governance.VerifiedRelease;
import org.tunica.signing.KeyRing;
import org.tunica.signing.KnownKey;
import org.tunica.signing.Signature;
import org.tunica.signing.SigningRole;
import org.tunica.signing.Withdrawal;
import org.tunica.store.KeptKey;
import org.tunica.store.KeptRelease;
import org.tunica.store.KeptSignature;
import org.tunica.store.KeptStep;
import org.tunica.store.KeyState;
import org.tunica.store.Store;

/** What is kept of releases and keys, to be looked at. */
public final class ReleaseRecords {
    private final Store store;

    /** The releases kept in a store. */
    public ReleaseRecords(Store store) {
        this.store = store;
    }

    /** Every release with what became of it, the one built first first. */
    public Timeline timeline() {
        Map<String, List<Step>> steps = new LinkedHashMap<>();
        store.releases()
                .steps()
                .forEach(kept -> steps.computeIfAbsent(kept.step().version(), version -> new ArrayList<>())
                        .add(step(kept)));
        return new Timeline(steps.entrySet().stream()
                .map(entry -> new Story(entry.getKey(), entry.getValue()))
                .toList());
    }

    private static Step step(KeptStep kept) {
        return new Step(
                kept.stamp().auditNumber(),
                Acts.kind(kept.step().act()),
                kept.stamp().at(),
                kept.step().from(),
                kept.stamp().by(),
                kept.step().reason(),
                kept.step().reviewBy());
    }

    /**
     * What became of one release.
     *
     * @throws FaultyInput when there is none of that version
     */
    public Story story(String version) {
        return timeline().story(version).orElseThrow(() -> unknown(version));
    }

    /**
     * A release with its signatures, nothing of it verified.
     *
     * @throws FaultyInput when there is none of that version
     */
    public SignedRelease release(String version) {
        KeptRelease kept = store.releases().one(version).orElseThrow(() -> unknown(version));
        return new SignedRelease(ReleaseFiles.unpacked(kept.files()), signatures(version));
    }

    private FaultyInput unknown(String version) {
        return new FaultyInput("release", List.of(new Fault("release " + version, "there is none of that version")));
    }

    /** The signatures under a release, first to last. */
    public Signatures signatures(String version) {
        return new Signatures(store.releases().signatures(version).stream()
                .map(ReleaseRecords::signature)
                .flatMap(Optional::stream)
                .toList());
    }

    private static Optional<Signature> signature(KeptSignature kept) {
        Faults faults = new Faults();
        byte[] json = kept.body().getBytes(StandardCharsets.UTF_8);
        Optional<Signature> read = Signature.read(new FieldReader(JsonText.parse("signature", json), "$", faults));
        faults.throwIfAny("signature of release " + kept.version());
        return read;
    }

    /** Who signed a release and who has to. */
    public SignOff signOff(Manifest manifest) {
        return SignOff.of(manifest, signatures(manifest.version()), keys());
    }

    /**
     * A release, verified with the keys as they count now.
     *
     * @throws FaultyInput with every reason why it may not be used
     */
    public VerifiedRelease verified(String version) {
        SignedRelease release = release(version);
        return ReleaseCheck.verified(release.files(), release.signatures(), keys());
    }

    /** The same with the keys as they counted at a moment. */
    VerifiedRelease verified(String version, Instant moment) {
        SignedRelease release = release(version);
        return ReleaseCheck.verified(release.files(), release.signatures(), keys().asOf(moment));
    }

    /** Every public key of every person. */
    public KeyRing keys() {
        return new KeyRing(
                store.users().everyKey().stream().map(ReleaseRecords::known).toList());
    }

    private static KnownKey known(KeptKey kept) {
        Set<SigningRole> roles = Arrays.stream(SigningRole.values())
                .filter(role -> List.of(kept.key().purpose().split(",")).contains(role.word()))
                .collect(Collectors.toSet());
        Optional<Withdrawal> end = kept.key().state() == KeyState.IN_USE
                ? Optional.empty()
                : Optional.of(new Withdrawal(
                        kept.stamp().at(),
                        kept.end()
                                .map(why -> Withdrawal.Reason.valueOf(why.name()))
                                .orElse(Withdrawal.Reason.NO_LONGER_USED)));
        return new KnownKey(kept.key().user(), kept.key().keyId(), kept.key().publicKey(), roles, end);
    }
}
