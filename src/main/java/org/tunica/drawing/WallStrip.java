package org.tunica.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;
import org.tunica.plan.SegmentAdvice;
import org.tunica.wording.SegmentWords;

/**
 * The wall of a segment to scale, option by option: how thick it is when each technique acts, how deep each kills, and how
 * warm nerve and skin beyond it get. All distances run from the inner face of the wall outwards.
 *
 * @param title which segment
 * @param rows the ranked options, best first; then those that wait for a measurement
 * @param untold the options without a computed wall, in words; what is unknown is named, not drawn
 * @param endMm where the strip ends; what lies further out is named at its end
 */
public record WallStrip(String title, List<StripRow> rows, List<String> untold, double endMm) {
    /** The numbers of the knowledge read here. */
    public static final List<String> IDS = WallCoats.IDS;

    /** Beyond this nothing is drawn: a wall must stay wide enough to be looked into. */
    private static final double LONGEST_MM = 6;

    private static final double SHORTEST_MM = 3;

    /** Room beyond the outermost mark. */
    private static final double ROOM_MM = 0.5;

    public WallStrip {
        rows = List.copyOf(rows);
        untold = List.copyOf(untold);
    }

    /** The strip of a segment. */
    public static WallStrip of(SegmentAdvice advice, Segment segment) {
        StripReading reading = new StripReading(segment);
        List<StripRow> rows = new ArrayList<>();
        List<String> untold = new ArrayList<>();
        advice.options().stream()
                .filter(StripReading::shown)
                .forEach(option -> reading.row(option)
                        .ifPresentOrElse(
                                rows::add,
                                () -> untold.add(option.says() + ": "
                                        + option.predicted().says())));
        return new WallStrip(SegmentWords.title(advice), rows, untold, end(rows));
    }

    private static double end(List<StripRow> rows) {
        double outermostMm = rows.stream()
                .flatMapToDouble(WallStrip::marks)
                .filter(mm -> mm <= LONGEST_MM - ROOM_MM)
                .max()
                .orElse(0);
        return Math.max(SHORTEST_MM, outermostMm + ROOM_MM);
    }

    private static DoubleStream marks(StripRow row) {
        double deepestMm = row.deepest().map(Reach::highMm).orElse(row.wallMm());
        return DoubleStream.concat(
                DoubleStream.of(deepestMm), row.beside().stream().mapToDouble(Warmed::atMm));
    }

    /** The strip as one SVG element. */
    public String svg(Knowledge knowledge) {
        return new StripDrawing(this, WallCoats.of(knowledge)).svg();
    }

    /** The same as a table: its head, then a row an option. */
    public List<List<String>> table() {
        return StripWords.table(this);
    }

    /** The same in sentences, one an option. */
    public List<String> sentences() {
        return StripWords.sentences(this);
    }
}
