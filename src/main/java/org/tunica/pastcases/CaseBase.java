package org.tunica.pastcases;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Knowledge;

/**
 * Past cases in one folder, one JSON object on each line of {@code cases.jsonl}. They are read line by line, never all at once;
 * what is added is there whole or not at all, whenever the program ends. One program writes at a time; readers need not wait.
 */
public final class CaseBase {
    /** The file of the released cases in the folder of a base. */
    public static final String CASES = "cases.jsonl";

    private final Path folder;
    private final PastCaseReader reader;
    private final CaseLines lines;
    private final Function<PastCase, String> toLine;
    private final Consumer<NewBase.Stage> stages;

    /**
     * The base in a folder, which need not be there yet.
     *
     * @param toLine a past case as JSON on one line
     */
    public CaseBase(Path folder, Knowledge knowledge, Function<PastCase, String> toLine) {
        this(folder, knowledge, toLine, stage -> {});
    }

    CaseBase(Path folder, Knowledge knowledge, Function<PastCase, String> toLine, Consumer<NewBase.Stage> stages) {
        this.folder = folder;
        this.reader = new PastCaseReader(knowledge);
        this.lines = new CaseLines(reader);
        this.toLine = toLine;
        this.stages = stages;
    }

    /**
     * Brings in every case of a file, packed with gzip or not.
     *
     * @throws FaultyInput with the faults of each line and its number; then nothing was brought in
     */
    public Imported importFrom(Path file, CaseProgress progress) {
        try (CaseFileSource source = CaseFileSource.open(file)) {
            return grow(file.toString(), (faults, sink) -> lines.each(source, faults, progress, sink));
        }
    }

    /**
     * Brings in cases, all or none.
     *
     * @throws FaultyInput when one would not be read back, or is there already
     */
    public Imported add(List<PastCase> cases) {
        return add(cases.stream());
    }

    /** The same of cases that come one by one and need never be held together. */
    public Imported add(Stream<PastCase> cases) {
        return grow("cases", (faults, sink) -> {
            long number = 0;
            for (Iterator<PastCase> all = cases.iterator(); all.hasNext() && !faults.full(); ) {
                number++;
                byte[] line = bytes(all.next());
                sink.take(new LineReader.Line(number, line, true, false), reader.read("case " + number, line));
            }
            return number;
        });
    }

    /** Hands cases over. */
    private interface Bringing {
        long to(LineFaults faults, CaseLines.Sink sink) throws IOException;
    }

    private Imported grow(String what, Bringing bringing) {
        try (BaseLock only = BaseLock.of(folder);
                NewBase next = new NewBase(only.file(CASES), stages)) {
            IdSet ids = new IdSet();
            long before = copy(next, ids);
            LineFaults faults = new LineFaults();
            long brought = bringing.to(faults, (line, read) -> {
                if (!ids.add(read.id())) {
                    faults.add(line.number(), "$.id: \"" + read.id() + "\" is there already, or on a line before");
                } else if (faults.none()) {
                    next.line(bytes(read));
                }
            });
            faults.throwIfAny(what);
            return new Imported(brought, before, "sha256:" + next.take());
        } catch (IOException e) {
            throw CaseLines.unwritable(folder.toString(), e);
        }
    }

    private long copy(NewBase next, IdSet ids) throws IOException {
        long before = 0;
        next.started();
        if (Files.exists(cases())) {
            try (CaseFileSource old = CaseFileSource.open(cases())) {
                before = OldLines.copy(old, next, ids, cases());
            }
        }
        next.copied();
        return before;
    }

    /**
     * Hands over every case in the order of the base.
     *
     * @throws FaultyInput when the base is damaged, with each damaged line; all sound cases were handed over then
     */
    public long each(Consumer<PastCase> taker, CaseProgress progress) {
        return read(progress, (line, read) -> taker.accept(read));
    }

    /**
     * Hands over every line in the order of the base as it stands, to be read elsewhere, by several threads at once.
     *
     * @throws FaultyInput when a line is no line of a base; all others were handed over then
     */
    public long eachLine(Consumer<CaseLine> taker, CaseProgress progress) {
        return reading((source, faults) -> lines.eachUnread(source, faults, progress, taker));
    }

    /**
     * Writes the cases asked for, one on a line, in the order of the base.
     *
     * @return how many
     * @throws FaultyInput when the base is damaged, with each damaged line
     */
    public long export(CaseFilter filter, Appendable out, CaseProgress progress) {
        long[] written = {0};
        read(progress, (line, read) -> {
            if (filter.holds(read)) {
                out.append(new String(line.bytes(), StandardCharsets.UTF_8)).append('\n');
                written[0]++;
            }
        });
        return written[0];
    }

    /**
     * Reads every line and counts.
     *
     * @throws FaultyInput with each damaged line
     */
    public CaseCount check(CaseProgress progress) {
        return Files.exists(cases()) ? readFile(cases(), reader, any -> {}, progress) : new Counting().sum();
    }

    /**
     * Reads every line of a file that belongs to no base yet, and counts.
     *
     * @param taker is handed each sound case, also where a later line is faulty
     * @throws FaultyInput with each faulty line
     */
    public static CaseCount readFile(
            Path file, PastCaseReader reader, Consumer<PastCase> taker, CaseProgress progress) {
        Counting counting = new Counting();
        IdSet ids = new IdSet();
        LineFaults faults = new LineFaults();
        try (CaseFileSource source = CaseFileSource.open(file)) {
            new CaseLines(reader).each(source, faults, progress, (line, read) -> {
                if (!ids.add(read.id())) {
                    faults.add(line.number(), "$.id: \"" + read.id() + "\" is on a line before");
                }
                counting.add(line.bytes(), read);
                taker.accept(read);
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        faults.throwIfAny(file.toString());
        return counting.sum();
    }

    private long read(CaseProgress progress, CaseLines.Sink sink) {
        return reading((source, faults) -> lines.each(source, faults, progress, sink));
    }

    /** A way of reading the file of the base. */
    private interface Reading {
        long of(CaseFileSource source, LineFaults faults) throws IOException;
    }

    private long reading(Reading reading) {
        if (!Files.exists(cases())) {
            throw new FaultyInput("case base", List.of(new Fault(folder.toString(), "holds no " + CASES)));
        }
        LineFaults faults = new LineFaults();
        try (CaseFileSource source = CaseFileSource.open(cases())) {
            long read = reading.of(source, faults);
            faults.throwIfAny(cases().toString());
            return read;
        } catch (IOException e) {
            throw CaseLines.unwritable("output", e);
        }
    }

    private Path cases() {
        return folder.resolve(CASES);
    }

    private byte[] bytes(PastCase one) {
        return toLine.apply(one).getBytes(StandardCharsets.UTF_8);
    }
}
