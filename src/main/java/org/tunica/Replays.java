package org.tunica;

import java.util.Map;
import java.util.TreeMap;
import org.tunica.paper.Document;
import org.tunica.physics.HeatMemory;
import org.tunica.replay.Comparer;
import org.tunica.replay.ReleaseSide;
import org.tunica.replay.Replay;
import org.tunica.replay.ReplayPage;
import org.tunica.replay.ReplayRequest;
import org.tunica.replay.ReplayResult;

/** Two releases held against each other: one case, or very many. Immutable. */
public final class Replays {
    private final Tunica before;
    private final Tunica after;

    Replays(Tunica before, Tunica after) {
        this.before = before;
        this.after = after;
    }

    /** Tells what differs between two advices of one case. */
    public Comparer comparer() {
        return Comparer.of(before.knowledge(), before.rules(), after.knowledge(), after.rules());
    }

    /** A replay of many cases, ready to run. */
    public Replay prepare(ReplayRequest request) {
        HeatMemory memory = memory(before, request);
        boolean shared = before.physics().heatDigest().equals(after.physics().heatDigest());
        return Replay.of(
                side(before, memory), side(after, shared ? memory : memory(after, request)), request, JsonOutput::line);
    }

    private static HeatMemory memory(Tunica release, ReplayRequest request) {
        return request.work().map(work -> work.heat(release.physics())).orElseGet(HeatMemory::recent);
    }

    private static ReleaseSide side(Tunica release, HeatMemory memory) {
        return ReleaseSide.of(release.release(), release.knowledge(), release.rules(), memory);
    }

    /** A result as a page. */
    public Document page(ReplayResult result) {
        Map<String, String> names = new TreeMap<>();
        before.knowledge().techniques().forEach((id, technique) -> names.put(id, technique.says()));
        after.knowledge().techniques().forEach((id, technique) -> names.put(id, technique.says()));
        return new ReplayPage(names).of(result);
    }

    /** A result as JSON, {@code tunica-replay/1}; the same result gives the same bytes. */
    public String toJson(ReplayResult result) {
        return JsonOutput.of(result);
    }
}
