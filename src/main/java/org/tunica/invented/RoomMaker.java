package org.tunica.invented;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.tunica.casefile.Room;
import org.tunica.knowledge.Distribution;
import org.tunica.knowledge.Knowledge;

/** Makes up a room: what kind it is decides which devices are likely there. */
final class RoomMaker {
    private final Choice<String> kinds;
    private final Map<String, Shares<String>> devices = new LinkedHashMap<>();
    private final Distribution has;
    private final Choice<Double> lidocainePercent;
    private final List<Double> strengthsPercent;

    RoomMaker(Knowledge knowledge) {
        this.kinds = Choice.of(knowledge.invented("invented.room.kind"), word -> word);
        kinds.things()
                .forEach(kind -> devices.put(kind, Shares.of(knowledge.invented("invented.room." + kind), id -> {
                    knowledge.technique(id);
                    return id;
                })));
        this.has = knowledge.invented("invented.room.has");
        this.lidocainePercent = Choice.of(knowledge.invented("invented.room.lidocaine"), Double::valueOf);
        this.strengthsPercent = Choice.of(knowledge.invented("invented.foam.strength"), Double::valueOf)
                .things();
    }

    Room from(Draw draw) {
        Set<String> there = devices.get(kinds.from(draw)).from(draw);
        Room.FoamGas gas = draw.happens(has.number("co2-o2")) ? Room.FoamGas.CO2_O2 : Room.FoamGas.AIR;
        return new Room(
                Optional.of(there),
                Optional.of(sclerosants(there)),
                Optional.of(Set.of(gas)),
                Optional.of(new Room.Tumescent(
                        OptionalDouble.of(lidocainePercent.from(draw)), yes(draw, "adrenaline"), yes(draw, "chilled"))),
                yes(draw, "tilt-table"),
                OptionalDouble.empty(),
                Optional.empty());
    }

    private List<Room.Sclerosant> sclerosants(Set<String> there) {
        List<Room.Sclerosant> stocked = new ArrayList<>();
        if (there.contains("foam-polidocanol") || there.contains("mechanochemical")) {
            strengthsPercent.forEach(
                    percent -> stocked.add(new Room.Sclerosant(Room.SclerosantDrug.POLIDOCANOL, percent)));
        }
        if (there.contains("foam-sts")) {
            strengthsPercent.forEach(percent ->
                    stocked.add(new Room.Sclerosant(Room.SclerosantDrug.SODIUM_TETRADECYL_SULPHATE, percent)));
        }
        return stocked;
    }

    private Optional<Boolean> yes(Draw draw, String what) {
        return Optional.of(draw.happens(has.number(what)));
    }
}
