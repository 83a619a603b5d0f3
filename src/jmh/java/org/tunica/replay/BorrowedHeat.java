package org.tunica.replay;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.tunica.heat.MeasurementSpread;
import org.tunica.physics.HeatOutlook;
import org.tunica.physics.HeatQuestion;
import org.tunica.physics.Physics;

/**
 * Answers of the heat model borrowed from a similar wall, so that a hundred thousand cases have some: to time a replay, and for
 * nothing else. To seek them all takes hours.
 */
final class BorrowedHeat {
    private static final double WALL_STEP_MM = 0.2;
    private static final double FEWEST_STEPS = 2;
    private static final double MOST_STEPS = 5;
    private static final double FAR_MM = 10;

    private final Physics physics;
    private final Map<HeatQuestion, HeatOutlook> lenders = new ConcurrentHashMap<>();

    BorrowedHeat(Physics physics) {
        this.physics = physics;
    }

    HeatOutlook answer(HeatQuestion question) {
        double steps = Math.min(MOST_STEPS, Math.max(FEWEST_STEPS, Math.rint(question.wallMm() / WALL_STEP_MM)));
        HeatQuestion lender = new HeatQuestion(
                question.device(),
                steps * WALL_STEP_MM,
                question.blood(),
                question.chilled(),
                FAR_MM,
                FAR_MM,
                new MeasurementSpread(WALL_STEP_MM, 1, 1, 1));
        HeatOutlook lent = lenders.computeIfAbsent(lender, physics::heatOutlook);
        return new HeatOutlook(
                lent.radiusMm(), question.wallMm(), Optional.of(lent.proposed().orElseThrow()), "");
    }

    /**
     * Makes the one answer true that a replay computes again when it opens a work folder; were it borrowed, the replay would
     * rightly forget all of them.
     *
     * @param work folder that holds borrowed answers, open nowhere
     */
    static void passMuster(Path work, Physics physics) throws IOException {
        Path file = heatFile(work);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            long looked = channel.size() / HeatRecord.BYTES / 2 * HeatRecord.BYTES;
            ByteBuffer record = ByteBuffer.allocate(HeatRecord.BYTES);
            if (looked == 0 || channel.read(record, looked) != HeatRecord.BYTES) {
                throw new IllegalStateException(file + " holds nothing whole in its middle");
            }
            HeatQuestion question = HeatRecord.read(record).orElseThrow().question();
            channel.write(HeatRecord.bytes(question, physics.heatOutlook(question)), looked);
        }
    }

    /** The file of answers in a work folder that holds those to one set of constants. */
    static Path heatFile(Path work) throws IOException {
        try (Stream<Path> files = Files.list(work)) {
            return files.filter(path -> path.getFileName().toString().startsWith("heat-"))
                    .findFirst()
                    .orElseThrow();
        }
    }
}
