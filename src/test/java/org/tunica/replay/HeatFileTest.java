package org.tunica.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.FaultyInput;
import org.tunica.physics.Derived;
import org.tunica.physics.HeatMemory;
import org.tunica.physics.HeatOutlook;
import org.tunica.physics.HeatQuestion;
import org.tunica.physics.Physics;

/** Answers of the heat model come back from a file to the last bit, or not at all. */
class HeatFileTest {
    private static final Physics MODEL = Edited.SHIPPED.physics();
    private static final String CONSTANTS = MODEL.heatDigest();
    private static final CaseFile CASE = Edited.demo("straight-thigh-trunk");

    /** One of each device, so that every kind of setting is among them. */
    private static final Map<HeatQuestion, HeatOutlook> ANSWERS = answers();

    @TempDir
    private Path folder;

    private static Map<HeatQuestion, HeatOutlook> answers() {
        Map<HeatQuestion, HeatOutlook> answers = new LinkedHashMap<>();
        MODEL.heatQuestions(CASE, CASE.limbs().get(0).segments().get(0))
                .forEach(question -> answers.put(question, MODEL.heatOutlook(question)));
        return answers;
    }

    private Path file() {
        return folder.resolve("heat.bin");
    }

    private HeatFile filled() {
        HeatFile file = HeatFile.open(file(), CONSTANTS);
        ANSWERS.forEach(file::keep);
        return file;
    }

    @Test
    void everyAnswerComesBackToTheLastBit() {
        assertEquals(10, ANSWERS.size());
        try (HeatFile written = filled();
                HeatFile read = HeatFile.open(file(), CONSTANTS)) {
            ANSWERS.forEach((question, answer) -> {
                assertEquals(Optional.of(answer), written.recall(question));
                assertEquals(Optional.of(answer), read.recall(question));
            });
            assertEquals(10, read.size());
        }
    }

    /** A wall, a gap or a spread that differs in its last bit is another question. */
    @Test
    void whatWasNotAskedIsNotAnswered() {
        try (HeatFile file = filled()) {
            HeatQuestion known = ANSWERS.keySet().iterator().next();
            HeatQuestion other = new HeatQuestion(
                    known.device(),
                    Math.nextUp(known.wallMm()),
                    known.blood(),
                    known.chilled(),
                    known.nerveGapMm(),
                    known.skinGapMm(),
                    known.spread());
            assertEquals(Optional.empty(), file.recall(other));
        }
    }

    @Test
    void aCutTailIsLostAndWrittenAgain() throws IOException {
        filled().close();
        try (FileChannel channel = FileChannel.open(file(), StandardOpenOption.WRITE)) {
            channel.truncate(channel.size() - 100);
        }
        HeatQuestion last = ANSWERS.keySet().stream().reduce((a, b) -> b).orElseThrow();
        try (HeatFile file = HeatFile.open(file(), CONSTANTS)) {
            assertEquals(9, file.size());
            assertEquals(Optional.empty(), file.recall(last));
            file.keep(last, ANSWERS.get(last));
            assertEquals(Optional.of(ANSWERS.get(last)), file.recall(last));
        }
    }

    @Test
    void aFlippedBitMakesARecordCountAsNotThere() throws IOException {
        filled().close();
        try (FileChannel channel = FileChannel.open(file(), StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            ByteBuffer one = ByteBuffer.allocate(1);
            long place = HeatRecord.BYTES + 300;
            channel.read(one, place);
            one.put(0, (byte) (one.get(0) ^ 4)).rewind();
            channel.write(one, place);
        }
        try (HeatFile file = HeatFile.open(file(), CONSTANTS)) {
            assertEquals(9, file.size());
        }
    }

    @Test
    void otherConstantsBeginAnew() {
        filled().close();
        try (HeatFile file = HeatFile.open(file(), "sha256:of other constants")) {
            assertEquals(0, file.size());
        }
    }

    /** An answer of a program that computes otherwise has a sound checksum; computing it again tells. */
    @Test
    void answersOfAnotherProgramAreForgotten() throws IOException {
        try (WorkFolder work = WorkFolder.of(folder)) {
            HeatMemory memory = work.heat(MODEL);
            HeatQuestion question = ANSWERS.keySet().iterator().next();
            HeatOutlook sound = ANSWERS.get(question);
            memory.keep(
                    question,
                    new HeatOutlook(Math.nextUp(sound.radiusMm()), sound.wallOnDeviceMm(), sound.proposed(), ""));
        }
        try (WorkFolder work = WorkFolder.of(folder)) {
            assertEquals(
                    Optional.empty(),
                    work.heat(MODEL).recall(ANSWERS.keySet().iterator().next()));
        }
    }

    @Test
    void numbersComputedFromAFileAreThoseComputedAnew() {
        Derived anew = MODEL.derive(CASE, CASE.limbs().get(0).segments().get(0));
        try (HeatFile file = filled()) {
            Physics remembering = new Physics(Edited.SHIPPED.knowledge(), file);
            assertEquals(
                    anew,
                    remembering.deriveInTurn(
                            CASE, CASE.limbs().get(0).segments().get(0)));
        }
    }

    @Test
    void theDigestNamesWhatTheModelRestsOnAndNothingElse() {
        assertEquals(
                CONSTANTS,
                Edited.release()
                        .withValue("knowledge/limits/distances.yaml", "heat.skin-gap.min", "6")
                        .tunica()
                        .physics()
                        .heatDigest());
        assertFalse(CONSTANTS.equals(Edited.release()
                .scaled("tissue.body.temperature", 1.01)
                .tunica()
                .physics()
                .heatDigest()));
    }

    @Test
    void oneProgramWorksInAFolder() {
        WorkFolder work = WorkFolder.of(folder);
        FaultyInput refused = assertThrows(FaultyInput.class, () -> WorkFolder.of(folder));
        assertTrue(refused.getMessage().contains("another program works in it"), refused.getMessage());
        work.close();
        WorkFolder.of(folder).close();
    }
}
