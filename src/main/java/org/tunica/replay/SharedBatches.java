package org.tunica.replay;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Function;

/** Batches that several programs share. */
final class SharedBatches implements BatchStore {
    private final String replay;
    private final SharedParts parts;
    private final Function<BatchResult, String> toLine;

    /** @param toLine a result as JSON on one line */
    SharedBatches(String replay, SharedParts parts, Function<BatchResult, String> toLine) {
        this.replay = replay;
        this.parts = parts;
        this.toLine = toLine;
    }

    private SharedParts.Part part(int batch, String cases) {
        return new SharedParts.Part(replay, batch, cases);
    }

    @Override
    public Optional<BatchResult> find(int batch, String cases) {
        return parts.find(part(batch, cases)).map(line -> BatchReader.read(line.getBytes(StandardCharsets.UTF_8)));
    }

    @Override
    public boolean take(int batch, String cases) {
        return parts.take(part(batch, cases));
    }

    @Override
    public void keep(BatchResult result) {
        parts.keep(part(result.batch(), result.cases()), toLine.apply(result));
    }

    @Override
    public boolean shared() {
        return true;
    }
}
