package org.tunica.heat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** The columns of a bench file; the unit stands in the name. */
enum BenchColumn {
    DEVICE,
    POWER_W(Validity::power),
    PULLBACK_S_PER_CM(Validity::pullback),
    CYCLES(Validity::cycles),
    PULSES_PER_CM(Validity::pulses),
    WALL_MM(Validity::wall),
    TUMESCENT_MM(Validity::tumescent),
    TUMESCENT_C(Validity::start),
    KILLED_MM,
    DELAYED_MM,
    CHAR_SEEN,
    KILLED_SD_MM,
    DELAYED_SD_MM;

    /** What makes a setting, together with the columns of slice and measurement. */
    static final List<BenchColumn> SETTING = List.of(POWER_W, PULLBACK_S_PER_CM, CYCLES, PULSES_PER_CM);

    private static final List<BenchColumn> OPTIONAL = List.of(KILLED_SD_MM, DELAYED_SD_MM);

    private final Optional<Function<Validity, Validity.Range>> accepted;

    BenchColumn() {
        this.accepted = Optional.empty();
    }

    BenchColumn(Function<Validity, Validity.Range> accepted) {
        this.accepted = Optional.of(accepted);
    }

    /** The name in the header. */
    String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The range the heat model answers for, or every number from 0. */
    Validity.Range accepted(Validity validity) {
        return accepted.map(range -> range.apply(validity)).orElse(new Validity.Range(0, Double.MAX_VALUE));
    }

    boolean mayBeMissing() {
        return OPTIONAL.contains(this);
    }

    static Optional<BenchColumn> of(String id) {
        return Arrays.stream(values()).filter(column -> column.id().equals(id)).findFirst();
    }

    static List<String> ids() {
        return Arrays.stream(values()).map(BenchColumn::id).toList();
    }
}
