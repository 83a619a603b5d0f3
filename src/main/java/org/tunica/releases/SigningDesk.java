package org.tunica.releases;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import org.tunica.governance.Manifest;
import org.tunica.governance.ReleaseCheck;
import org.tunica.governance.ReleaseState;
import org.tunica.governance.SignOff;
import org.tunica.governance.StepKind;
import org.tunica.signing.Purpose;
import org.tunica.signing.Signature;
import org.tunica.signing.SigningRole;
import org.tunica.signing.Statement;
import org.tunica.store.Act;
import org.tunica.store.Actor;
import org.tunica.store.NewStep;
import org.tunica.store.Role;
import org.tunica.store.Store;
import org.tunica.store.User;
import org.tunica.store.UserState;

/** Where a release is acknowledged and signed. */
public final class SigningDesk {
    /** How far the clock of the person who signs may be off. */
    private static final Duration LEEWAY = Duration.ofMinutes(10);

    /** An approved or active release may be signed again when a key that signed it fell into other hands. */
    private static final Set<ReleaseState> OPEN =
            Set.of(ReleaseState.IN_REVIEW, ReleaseState.APPROVED, ReleaseState.ACTIVE);

    private final Store store;
    private final Clock clock;
    private final ReleaseRecords records;

    /** The releases kept in a store, at the time of a clock. */
    public SigningDesk(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
        this.records = new ReleaseRecords(store);
    }

    /**
     * What a person has to sign: a reviewer the replay, a clinical lead or a safety officer the release.
     *
     * @throws FaultyInput when there is no such release, or its files are not as it says
     */
    public Statement statement(String version, SigningRole role, String person, String keyId) {
        Manifest manifest = ReleaseCheck.intact(records.release(version).files());
        boolean reviews = role == SigningRole.REVIEWER;
        return new Statement(
                reviews ? Purpose.ACKNOWLEDGE_REPLAY : Purpose.SIGN_OFF,
                version,
                reviews ? manifest.replay() : manifest.digest(),
                person,
                role,
                keyId,
                clock.instant().truncatedTo(ChronoUnit.SECONDS));
    }

    /**
     * Takes a signature. With the last one that is needed the release is approved, in the same transaction.
     *
     * @return who signed and who has to
     * @throws FaultyInput with the reason when it does not count
     */
    public SignOff sign(Signature signature) {
        Statement statement = signature.statement();
        Manifest manifest =
                ReleaseCheck.intact(records.release(statement.release()).files());
        return store.together(() -> {
            mayBeSigned(statement);
            isFresh(statement);
            holdsThePost(statement);
            keyIsInUse(statement);
            records.signOff(manifest).mustAccept(signature);
            Actor by = new Actor(statement.person());
            Act act = statement.purpose() == Purpose.SIGN_OFF ? Act.RELEASE_SIGNED : Act.REPLAY_ACKNOWLEDGED;
            store.releases().sign(by, act, manifest.version(), signature.tree().toString());
            SignOff signOff = records.signOff(manifest);
            approve(by, manifest.version(), signOff);
            return signOff;
        });
    }

    /**
     * Takes a signature somebody hands in for themselves, as JSON.
     *
     * @param person who hands it in
     * @throws FaultyInput with every fault; also when it is another person's, or of another release
     */
    public SignOff take(String version, String person, byte[] json) {
        Faults faults = new Faults();
        Optional<Signature> read = Signature.read(new FieldReader(JsonText.parse("signature", json), "$", faults));
        faults.throwIfAny("signature");
        Signature signature = read.orElseThrow();
        if (!signature.statement().person().equals(person)) {
            throw fault("$.person", "must be who is signed in; nobody hands in the signature of another");
        }
        if (!signature.statement().release().equals(version)) {
            throw fault("$.release", "must be " + version);
        }
        return sign(signature);
    }

    private void approve(Actor by, String version, SignOff signOff) {
        Instant now = clock.instant();
        if (signOff.complete() && records.story(version).stateAt(now) == ReleaseState.IN_REVIEW) {
            store.releases().step(by, new NewStep(version, Acts.of(StepKind.APPROVED), now, Optional.empty(), ""));
        }
    }

    private void mayBeSigned(Statement statement) {
        ReleaseState state = records.story(statement.release()).stateAt(clock.instant());
        if (!OPEN.contains(state)) {
            throw fault("release " + statement.release(), "is " + state.words() + "; only one in review is signed");
        }
    }

    private void isFresh(Statement statement) {
        Instant now = clock.instant();
        if (Duration.between(statement.at(), now).abs().compareTo(LEEWAY) > 0) {
            throw fault(
                    who(statement),
                    "signed at " + statement.at() + ", and it is " + now.truncatedTo(ChronoUnit.SECONDS)
                            + "; a signature is handed in at once");
        }
    }

    private void holdsThePost(Statement statement) {
        User user = store.users()
                .find(statement.person())
                .orElseThrow(() -> fault(who(statement), "there is nobody of that name"));
        if (user.state() != UserState.ACTIVE) {
            throw fault(who(statement), "has left");
        }
        if (statement.role() != SigningRole.REVIEWER
                && !user.roles().contains(Role.valueOf(statement.role().name()))) {
            throw fault(who(statement), "is no " + statement.role().words());
        }
    }

    private void keyIsInUse(Statement statement) {
        records.keys()
                .find(statement.person(), statement.keyId())
                .flatMap(key -> key.withdrawn())
                .ifPresent(end -> {
                    throw fault(
                            who(statement),
                            "key " + statement.keyId() + " was withdrawn on " + end.at() + ": "
                                    + end.reason().word().replace('-', ' '));
                });
    }

    private static String who(Statement statement) {
        return statement.role().words() + " " + statement.person();
    }

    private static FaultyInput fault(String place, String says) {
        return new FaultyInput("signature", List.of(new Fault(place, says)));
    }
}
