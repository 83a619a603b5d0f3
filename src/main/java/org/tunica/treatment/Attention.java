package org.tunica.treatment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.tunica.paper.Block;
import org.tunica.session.SessionPlan;

/** What a reader must not miss, before everything else. */
final class Attention {
    /** The device the series of {@link FollowUpLimits#reopenedAt1940NmUpToJPerCm} (S-0026) was treated with. */
    private static final String LONGEST_WAVELENGTH = "laser-1940-radial";

    private final FollowUpLimits limits;

    Attention(FollowUpLimits limits) {
        this.limits = limits;
    }

    List<Block> blocks(
            SessionPlan.Session session,
            DeliveredSession delivered,
            List<SegmentFacts> segments,
            List<ProcedureNote.HeatedStretch> stretches,
            List<String> doses) {
        List<Block> blocks = new ArrayList<>();
        if (delivered.consent().equals(Optional.of(false))) {
            blocks.add(new Block.Warning("Consent was not confirmed."));
        }
        segments.forEach(facts -> segment(facts, blocks));
        stretches.stream()
                .filter(stretch -> stretch.killed() != Killed.PROBABLY)
                .map(stretch -> stretch.ref() + ": " + HeatNote.sentence(stretch))
                .forEach(says -> blocks.add(new Block.Warning(says)));
        segments.forEach(facts -> reopened(facts, stretches, blocks));
        doses.forEach(says -> blocks.add(new Block.Warning(says)));
        missing(session, segments, blocks);
        if (blocks.isEmpty()) {
            blocks.add(new Block.Paragraph("Nothing that the record tells."));
        }
        return blocks;
    }

    private static void segment(SegmentFacts facts, List<Block> blocks) {
        DeliveredSegment done = facts.delivered();
        String ref = facts.mapped().ref();
        done.notDone().ifPresent(why -> blocks.add(new Block.Warning(ref + ": not done, " + why)));
        done.incidents()
                .filter(incidents -> !incidents.isEmpty())
                .ifPresent(incidents -> blocks.add(new Block.Warning(ref + ": " + Says.words(incidents))));
        if (done.closingDuplex().deepVeinOpen().equals(Optional.of(false))) {
            blocks.add(new Block.Warning(ref + ": the deep vein was not seen open at the last scan."));
        }
    }

    /** Row of one series (S-0026): so little energy at this wavelength left veins to reopen. */
    private void reopened(SegmentFacts facts, List<ProcedureNote.HeatedStretch> stretches, List<Block> blocks) {
        if (!facts.delivered().technique().equals(Optional.of(LONGEST_WAVELENGTH))) {
            return;
        }
        stretches.stream()
                .filter(stretch -> stretch.ref().equals(facts.mapped().ref()))
                .filter(this::little)
                .forEach(stretch -> blocks.add(new Block.Warning(stretch.ref()
                        + ": at 1940 nm so little linear energy left veins to reopen in the one series there is.")));
    }

    private boolean little(ProcedureNote.HeatedStretch stretch) {
        OptionalDouble jPerCm = stretch.balance().value(HeatBalance.Number.LINEAR_ENERGY);
        return jPerCm.isPresent() && jPerCm.getAsDouble() <= limits.reopenedAt1940NmUpToJPerCm();
    }

    private static void missing(SessionPlan.Session session, List<SegmentFacts> segments, List<Block> blocks) {
        Set<String> recorded =
                segments.stream().map(facts -> facts.mapped().ref()).collect(Collectors.toSet());
        session.steps().stream()
                .filter(step -> !recorded.contains(step.ref()))
                .forEach(step -> blocks.add(new Block.Warning(
                        step.ref() + ": planned for this session (" + step.says() + "), nothing is recorded of it.")));
    }
}
