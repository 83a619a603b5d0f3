package org.tunica.heat;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.Nearest;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.databind.ObjectReader;
import tools.jackson.dataformat.csv.CsvFactory;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;

/** Reads a bench file line by line, so that one broken line hides no fault of the others. */
final class BenchReader {
    private static final int LONGEST_LINE = 2_000;
    private static final Pattern DATE = Pattern.compile("#\\s*date:\\s*(.*?)\\s*");

    private static final ObjectReader CELLS = CsvMapper.builder(CsvFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxStringLength(LONGEST_LINE)
                            .build())
                    .build())
            .enable(CsvReadFeature.TRIM_SPACES)
            .build()
            .readerFor(String[].class);

    private final String name;
    private final HeatModel model;
    private final Faults faults = new Faults();
    private final List<BenchRow> rows = new ArrayList<>();
    private Optional<List<BenchColumn>> header = Optional.empty();
    private Optional<LocalDate> date = Optional.empty();

    /** @param name of the file, for messages */
    BenchReader(String name, HeatModel model) {
        this.name = name;
        this.model = model;
    }

    /**
     * The rows of a file.
     *
     * @throws FaultyInput with every fault by line and column
     */
    BenchFile read(byte[] csv) {
        List<String> lines = text(csv).lines().toList();
        for (int i = 0; i < lines.size() && rows.size() <= BenchFile.MOST_ROWS; i++) {
            line(i + 1, lines.get(i));
        }
        if (header.isEmpty()) {
            faults.add("file", "has no header line");
        }
        if (rows.size() > BenchFile.MOST_ROWS) {
            faults.add("file", "holds more than " + BenchFile.MOST_ROWS + " rows");
        }
        deviationsForAllOrNone();
        faults.throwIfAny(name);
        if (rows.isEmpty()) {
            throw fault("holds no row");
        }
        return new BenchFile(name, date, rows);
    }

    private String text(byte[] csv) {
        if (csv.length > BenchFile.LARGEST_BYTES) {
            throw fault("is larger than " + BenchFile.LARGEST_BYTES + " bytes");
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(csv))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw fault("is not UTF-8 text");
        }
    }

    private void line(int number, String line) {
        String place = "line " + number;
        if (line.startsWith("#")) {
            dateOf(place, line);
        } else if (line.length() > LONGEST_LINE) {
            faults.add(place, "is longer than " + LONGEST_LINE + " characters");
        } else if (!line.isBlank()) {
            cells(place, line).ifPresent(cells -> take(number, cells));
        }
    }

    private void dateOf(String place, String line) {
        Matcher matcher = DATE.matcher(line);
        if (header.isPresent() || !matcher.matches()) {
            return;
        }
        if (date.isPresent()) {
            faults.add(place, "names a second date");
        }
        try {
            date = Optional.of(LocalDate.parse(matcher.group(1)));
        } catch (DateTimeParseException e) {
            faults.add(place, "must name a date such as 2026-01-31, names \"" + matcher.group(1) + "\"");
        }
    }

    private Optional<List<String>> cells(String place, String line) {
        try {
            String[] cells = CELLS.readValue(line);
            return Optional.of(Arrays.asList(cells));
        } catch (JacksonException e) {
            faults.add(place, "cannot be cut into cells: a quotation mark is missing or out of place");
            return Optional.empty();
        }
    }

    private void take(int number, List<String> cells) {
        if (header.isEmpty()) {
            header = Optional.of(columns(number, cells));
            faults.throwIfAny(name);
        } else {
            new BenchCells(number, header.orElseThrow(), cells, model, faults)
                    .row()
                    .ifPresent(rows::add);
        }
    }

    private List<BenchColumn> columns(int number, List<String> names) {
        List<BenchColumn> columns = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            String place = "line " + number + ", column " + (i + 1);
            String id = names.get(i);
            BenchColumn.of(id)
                    .ifPresentOrElse(
                            column -> {
                                if (columns.contains(column)) {
                                    faults.add(place, column.id() + " stands twice");
                                }
                                columns.add(column);
                            },
                            () -> faults.add(
                                    place, "there is no column \"" + id + "\"" + Nearest.hint(id, BenchColumn.ids())));
        }
        Arrays.stream(BenchColumn.values())
                .filter(column -> !columns.contains(column) && !column.mayBeMissing())
                .forEach(column -> faults.add("line " + number, "the column " + column.id() + " is missing"));
        return columns;
    }

    /** With deviations for some depths only, nothing would say how much the others weigh. */
    private void deviationsForAllOrNone() {
        Optional<BenchRow> with = rows.stream()
                .filter(row -> row.depths().anyMatch(depth -> depth.sdMm().isPresent()))
                .findFirst();
        rows.stream()
                .filter(row -> with.isPresent()
                        && row.depths().anyMatch(depth -> depth.sdMm().isEmpty()))
                .forEach(row -> faults.add(
                        "line " + row.line(),
                        "a depth has no standard deviation while line "
                                + with.orElseThrow().line() + " has one: give it for every depth or for none"));
    }

    private FaultyInput fault(String says) {
        return new FaultyInput(name, List.of(new Fault("file", says)));
    }
}
