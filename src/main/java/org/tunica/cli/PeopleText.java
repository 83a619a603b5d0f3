package org.tunica.cli;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.tunica.store.Role;
import org.tunica.store.User;

/** People and their posts, in and out as words. */
final class PeopleText {
    private PeopleText() {}

    /** @throws org.tunica.casefile.FaultyInput when a post is none, or two do not go together */
    static void add(OpenReleases open, String name, List<String> posts) {
        Set<Role> roles = posts.stream()
                .map(post -> WordOption.of("--post", post, Role.class))
                .collect(Collectors.toSet());
        open.keys().addPerson(open.by(), name, roles);
    }

    static String all(OpenReleases open) {
        return open.store().users().all().stream()
                .sorted(Comparator.comparing(User::name))
                .map(PeopleText::line)
                .collect(Collectors.joining("\n"));
    }

    private static String line(User user) {
        String posts =
                user.roles().stream().map(role -> role.word().replace('-', ' ')).collect(Collectors.joining(", "));
        return user.name() + ": " + (posts.isEmpty() ? "no post" : posts) + ", "
                + user.state().word() + ".";
    }
}
