package org.tunica.web;

import java.security.Principal;
import java.time.Clock;
import java.util.List;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.tunica.frame.NotThere;
import org.tunica.governance.Manifest;
import org.tunica.governance.ReleaseFiles;
import org.tunica.governance.Story;
import org.tunica.governance.Timeline;
import org.tunica.releases.ReleaseRecords;
import org.tunica.releases.SigningDesk;
import org.tunica.store.Store;

/**
 * Releases and who signed them. A private key never comes here: who signs does so at a machine of their own and sends the
 * signature.
 */
@RestController
@RequestMapping(path = "/api/governance/releases", produces = MediaType.APPLICATION_JSON_VALUE)
final class ReleasesController {
    private final ReleaseRecords records;
    private final SigningDesk signing;
    private final Clock clock;

    ReleasesController(Store store, Clock clock) {
        this.records = new ReleaseRecords(store);
        this.signing = new SigningDesk(store, clock);
        this.clock = clock;
    }

    /** Every release and where it stands. */
    @GetMapping
    List<ReleaseLine> all() {
        Timeline timeline = records.timeline();
        return timeline.stories().stream().map(story -> line(timeline, story)).toList();
    }

    /** One release. */
    @GetMapping("/{version}")
    ReleaseLine one(@PathVariable String version) {
        Timeline timeline = records.timeline();
        return timeline.story(version).map(story -> line(timeline, story)).orElseThrow(() -> new NotThere("release"));
    }

    /** Its manifest, byte for byte as it is signed. */
    @GetMapping("/{version}/manifest")
    String manifest(@PathVariable String version) {
        one(version);
        return records.release(version).files().manifest().text();
    }

    /** What its replay found, byte for byte as it is acknowledged. */
    @GetMapping("/{version}/replay")
    String replay(@PathVariable String version) {
        one(version);
        return records.release(version).files().text(ReleaseFiles.REPLAY);
    }

    /** Takes a signature of whoever is signed in. */
    @PostMapping(path = "/{version}/signatures", consumes = MediaType.APPLICATION_JSON_VALUE)
    ReleaseLine sign(@PathVariable String version, @RequestBody byte[] json, Principal who) {
        one(version);
        signing.take(version, who.getName(), json);
        return one(version);
    }

    private ReleaseLine line(Timeline timeline, Story story) {
        Manifest manifest = records.release(story.version()).files().manifest();
        return ReleaseLine.of(timeline, story, manifest, records.signOff(manifest), clock.instant());
    }
}
