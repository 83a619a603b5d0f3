package org.tunica.casefile;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** Reads which technique a site puts into which cost class; a technique in two classes is a fault. */
final class CostClassReader {
    private final FieldReader reader;
    private final Set<String> techniqueIds;
    private final Set<String> seen = new HashSet<>();

    CostClassReader(FieldReader reader, Set<String> techniqueIds) {
        this.reader = reader;
        this.techniqueIds = techniqueIds;
    }

    Room.CostClasses read() {
        Room.CostClasses read = new Room.CostClasses(
                listed(Room.CostClass.LOW), listed(Room.CostClass.MIDDLING), listed(Room.CostClass.HIGH));
        reader.done();
        return read;
    }

    private Optional<Set<String>> listed(Room.CostClass costClass) {
        Optional<Set<String>> ids = reader.ids(costClass.word(), techniqueIds);
        ids.stream().flatMap(Set::stream).filter(id -> !seen.add(id)).forEach(id -> twice(costClass, id));
        return ids;
    }

    private void twice(Room.CostClass costClass, String id) {
        reader.fault(
                costClass.word(), "\"" + id + "\" stands in another class already; a technique has one cost class");
    }
}
