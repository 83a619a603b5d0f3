package org.tunica.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.tunica.casefile.Faults;
import org.tunica.casefile.Nearest;

/** The cells of one line of a bench file, read into a row; every fault is noted with line and column. */
final class BenchCells {
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,12}(\\.\\d{1,12})?");

    private final int line;
    private final List<BenchColumn> header;
    private final List<String> cells;
    private final HeatModel model;
    private final Faults faults;
    private boolean faulty;

    BenchCells(int line, List<BenchColumn> header, List<String> cells, HeatModel model, Faults faults) {
        this.line = line;
        this.header = header;
        this.cells = cells;
        this.model = model;
        this.faults = faults;
    }

    /** The row, when nothing is wrong with it. */
    Optional<BenchRow> row() {
        if (cells.size() != header.size()) {
            faults.add("line " + line, "has " + cells.size() + " cells, the header has " + header.size());
            return Optional.empty();
        }
        Optional<HeatSetting> setting = setting();
        double wallMm = required(BenchColumn.WALL_MM);
        double tumescentMm = required(BenchColumn.TUMESCENT_MM);
        double tumescentC = required(BenchColumn.TUMESCENT_C);
        Optional<BenchRow.Depth> killed = depth(BenchColumn.KILLED_MM, BenchColumn.KILLED_SD_MM, wallMm);
        Optional<BenchRow.Depth> delayed = depth(BenchColumn.DELAYED_MM, BenchColumn.DELAYED_SD_MM, wallMm);
        Optional<Boolean> charSeen = charSeen();
        delayedHoldsKilled(killed, delayed);
        if (text(BenchColumn.KILLED_MM).isEmpty()
                && text(BenchColumn.DELAYED_MM).isEmpty()
                && text(BenchColumn.CHAR_SEEN).isEmpty()) {
            fault("measures nothing: killed_mm, delayed_mm and char_seen are empty");
        }
        return faulty
                ? Optional.empty()
                : Optional.of(new BenchRow(
                        line,
                        setting.orElseThrow(),
                        VeinSlice.of(wallMm, tumescentMm, tumescentC),
                        killed,
                        delayed,
                        charSeen));
    }

    private Optional<HeatSetting> setting() {
        String id = text(BenchColumn.DEVICE);
        if (!model.devices().contains(id)) {
            fault(BenchColumn.DEVICE, "there is no device \"" + id + "\"" + Nearest.hint(id, model.devices()));
            return Optional.empty();
        }
        HeatDevice device = model.constants().device(id);
        if (device instanceof ContactElement) {
            double cycles = setting(id, List.of(BenchColumn.CYCLES)).get(0);
            if (Double.isFinite(cycles) && cycles != Math.rint(cycles)) {
                fault(BenchColumn.CYCLES, "must be a whole number, is " + cycles);
            }
            return faulty ? Optional.empty() : Optional.of(new HeatSetting.Held(id, (int) cycles));
        }
        if (device instanceof SteamCatheter) {
            double pulses = setting(id, List.of(BenchColumn.PULSES_PER_CM)).get(0);
            return faulty ? Optional.empty() : Optional.of(new HeatSetting.Pulsed(id, pulses));
        }
        List<Double> pulled = setting(id, List.of(BenchColumn.POWER_W, BenchColumn.PULLBACK_S_PER_CM));
        return faulty ? Optional.empty() : Optional.of(new HeatSetting.Pulled(id, pulled.get(0), pulled.get(1)));
    }

    /** The numbers a device takes; the others must be empty, or the row would mean two things. */
    private List<Double> setting(String device, List<BenchColumn> taken) {
        List<Double> numbers = new ArrayList<>();
        taken.forEach(column -> numbers.add(required(column)));
        BenchColumn.SETTING.stream()
                .filter(column -> !taken.contains(column) && !text(column).isEmpty())
                .forEach(column -> fault(column, "is not set on " + device + "; leave it empty"));
        return numbers;
    }

    private Optional<BenchRow.Depth> depth(BenchColumn column, BenchColumn deviation, double wallMm) {
        OptionalDouble sd = header.contains(deviation) ? number(deviation) : OptionalDouble.empty();
        if (sd.isPresent() && sd.getAsDouble() == 0) {
            fault(deviation, "must be above 0");
        }
        OptionalDouble depth = number(column);
        if (depth.isEmpty()) {
            if (sd.isPresent()) {
                fault(deviation, "is given without " + column.id());
            }
            return Optional.empty();
        }
        if (depth.getAsDouble() > wallMm) {
            fault(column, "is deeper than the wall; write wall_mm when the whole wall was dead");
        }
        return Optional.of(new BenchRow.Depth(depth.getAsDouble(), sd));
    }

    private void delayedHoldsKilled(Optional<BenchRow.Depth> killed, Optional<BenchRow.Depth> delayed) {
        if (killed.isPresent()
                && delayed.isPresent()
                && delayed.get().depthMm() < killed.get().depthMm()) {
            fault(BenchColumn.DELAYED_MM, "is smaller than killed_mm, which it includes");
        }
    }

    private Optional<Boolean> charSeen() {
        String text = text(BenchColumn.CHAR_SEEN);
        if (!text.isEmpty() && !text.equals("yes") && !text.equals("no")) {
            fault(BenchColumn.CHAR_SEEN, "must be yes, no or empty, is \"" + text + "\"");
        }
        return text.isEmpty() ? Optional.empty() : Optional.of(text.equals("yes"));
    }

    private double required(BenchColumn column) {
        OptionalDouble number = number(column);
        if (number.isEmpty() && text(column).isEmpty()) {
            fault(column, "must be given");
        }
        return number.orElse(Double.NaN);
    }

    /** Empty also for a cell that is no number, after its fault was noted. */
    private OptionalDouble number(BenchColumn column) {
        String text = text(column);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (!NUMBER.matcher(text).matches()) {
            fault(column, "must be a plain number such as 0.65, is \"" + text + "\"");
            return OptionalDouble.empty();
        }
        double number = Double.parseDouble(text);
        Validity.Range accepted = column.accepted(model.validity());
        if (!accepted.holds(number)) {
            fault(column, "is " + text + "; " + answersFor(accepted));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(number);
    }

    private static String answersFor(Validity.Range accepted) {
        return accepted.max() == Double.MAX_VALUE
                ? "must not be below " + accepted.min()
                : "the heat model answers for " + accepted.min() + " to " + accepted.max() + " only";
    }

    private String text(BenchColumn column) {
        return cells.get(header.indexOf(column));
    }

    private void fault(BenchColumn column, String says) {
        faulty = true;
        faults.add("line " + line + ", column " + (header.indexOf(column) + 1) + " (" + column.id() + ")", says);
    }

    private void fault(String says) {
        faulty = true;
        faults.add("line " + line, says);
    }
}
