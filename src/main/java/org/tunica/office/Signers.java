package org.tunica.office;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tunica.governance.Manifest;
import org.tunica.governance.ReleaseState;
import org.tunica.governance.SignOff;
import org.tunica.governance.Story;
import org.tunica.signing.KnownKey;
import org.tunica.signing.Signature;
import org.tunica.signing.SigningRole;
import org.tunica.store.Role;
import org.tunica.store.User;
import org.tunica.store.UserState;

/** Who signed a release, and who may. */
record Signers(Desks desks) {
    static List<String> signed(SignOff signOff) {
        return signOff.counted().stream().map(Signers::signed).toList();
    }

    private static String signed(Signature signature) {
        String who = signature.statement().person() + " as "
                + signature.statement().role().words() + " at "
                + signature.statement().at();
        return switch (signature.statement().purpose()) {
            case SIGN_OFF -> who + " signed the release";
            case ACKNOWLEDGE_REPLAY -> who + " read the replay";
        };
    }

    /** Who could sign what is missing: posts held now, a key in use, no author. */
    List<String> maySign(Manifest manifest) {
        List<String> may = new ArrayList<>();
        for (SigningRole role : SigningRole.values()) {
            List<String> people = desks.store().users().all().stream()
                    .filter(user -> user.state() == UserState.ACTIVE)
                    .filter(user -> !manifest.authors().contains(user.name()))
                    .filter(user -> holds(user.roles(), role))
                    .map(User::name)
                    .filter(name -> key(name).isPresent())
                    .sorted()
                    .toList();
            may.add(role.words() + ": "
                    + (people.isEmpty() ? "nobody who holds the post and a key in use" : String.join(", ", people)));
        }
        return may;
    }

    private static boolean holds(Set<Role> roles, SigningRole role) {
        return role == SigningRole.REVIEWER
                ? roles.stream().anyMatch(Signers::reviews)
                : roles.contains(Role.valueOf(role.name()));
    }

    private static boolean reviews(Role role) {
        return EnumSet.of(Role.SPECIALIST, Role.MEETING_MEMBER, Role.CLINICAL_LEAD, Role.SAFETY_OFFICER)
                .contains(role);
    }

    private Optional<KnownKey> key(String person) {
        return desks.records().keys().keys().stream()
                .filter(key -> key.person().equals(person) && key.withdrawn().isEmpty())
                .findFirst();
    }

    /** What somebody with these roles may sign of a release in review. */
    List<ReleasePage.Ask> asks(Story story, Manifest manifest, String person, Set<Role> roles) {
        if (story.stateAt(desks.moment()) != ReleaseState.IN_REVIEW
                || manifest.authors().contains(person)) {
            return List.of();
        }
        List<ReleasePage.Ask> asks = new ArrayList<>();
        for (SigningRole role : SigningRole.values()) {
            if (holds(roles, role)) {
                boolean reviews = role == SigningRole.REVIEWER;
                String digest = reviews ? manifest.replay() : manifest.digest();
                asks.add(new ReleasePage.Ask(
                        role.words(),
                        reviews ? "the replay, which you have read" : "the release, all of it",
                        digest,
                        "tunica key sign --key KEY.json --as " + role.word() + " --release " + manifest.version()
                                + " --digest " + digest));
            }
        }
        return asks;
    }
}
