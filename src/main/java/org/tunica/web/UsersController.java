package org.tunica.web;

import java.security.Principal;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import org.tunica.accounts.Accounts;
import org.tunica.accounts.GivenLink;
import org.tunica.frame.NotThere;
import org.tunica.store.Actor;
import org.tunica.store.Store;
import org.tunica.store.User;
import org.tunica.store.Users;

/** The users of this server, for its administrator. */
@RestController
@RequestMapping(path = "/api/users", produces = MediaType.APPLICATION_JSON_VALUE)
final class UsersController {
    private final Accounts accounts;
    private final Users users;
    private final Clock clock;

    UsersController(Accounts accounts, Store store, Clock clock) {
        this.accounts = accounts;
        this.users = store.users();
        this.clock = clock;
    }

    /** All users, the one changed last first. */
    @GetMapping
    List<UserLine> list() {
        return users.all().stream().map(this::line).toList();
    }

    /** One user. */
    @GetMapping("/{name}")
    ResponseEntity<UserLine> one(@PathVariable String name) {
        return tagged(users.find(name).orElseThrow(() -> new NotThere("user")));
    }

    /** Adds a user, whose link to set a password is the answer; or changes roles and state of one that was seen. */
    @PutMapping(path = "/{name}", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<?> put(
            @PathVariable String name,
            @RequestBody byte[] json,
            @RequestHeader(HttpHeaders.IF_MATCH) Optional<String> ifMatch,
            @RequestHeader(HttpHeaders.IF_NONE_MATCH) Optional<String> ifNoneMatch,
            Principal who) {
        long seen = Seen.version(ifMatch, ifNoneMatch);
        WantedUser wanted = WantedUser.read(json);
        Actor by = new Actor(who.getName());
        if (seen == 0) {
            GivenLink link = accounts.add(by, name, wanted.roles());
            return ResponseEntity.status(HttpStatus.CREATED).body(UserLine.Handed.of(name, server(), link));
        }
        return tagged(accounts.change(by, name, seen, wanted.roles(), wanted.state()));
    }

    /** Gives a user a new link; the password, or the link before, ends. */
    @PostMapping("/{name}/link")
    UserLine.Handed renew(@PathVariable String name, Principal who) {
        return UserLine.Handed.of(name, server(), accounts.renew(new Actor(who.getName()), name));
    }

    private ResponseEntity<UserLine> tagged(User user) {
        return ResponseEntity.ok().eTag(Seen.tag(user.version())).body(line(user));
    }

    private UserLine line(User user) {
        return UserLine.of(user, clock.instant());
    }

    /** As whoever asks calls this server; its names are checked. */
    private static String server() {
        return ServletUriComponentsBuilder.fromCurrentContextPath().build().toUriString();
    }
}
