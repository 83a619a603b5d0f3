package org.tunica.replay;

import java.io.DataOutputStream;
import java.io.IOException;
import java.util.Optional;
import org.tunica.heat.EnergyBook;
import org.tunica.heat.HeatFlag;
import org.tunica.heat.HeatRun;
import org.tunica.heat.HeatSetting;
import org.tunica.heat.HeatSpread;
import org.tunica.heat.Interval;
import org.tunica.heat.ProposedSetting;
import org.tunica.heat.WarmedPoint;
import org.tunica.heat.WarmedSpread;
import org.tunica.physics.HeatOutlook;
import org.tunica.physics.HeatQuestion;

/** Writes what the heat model was asked and answered; {@link HeatBytes} reads the same in the same order. */
final class HeatWriter {
    private HeatWriter() {}

    static void question(DataOutputStream out, HeatQuestion question) throws IOException {
        out.writeUTF(question.device());
        out.writeBoolean(question.blood());
        out.writeBoolean(question.chilled());
        numbers(
                out,
                question.wallMm(),
                question.nerveGapMm(),
                question.skinGapMm(),
                question.spread().wallSdMm(),
                question.spread().tumescentSdMm(),
                question.spread().nerveGapSdMm(),
                question.spread().skinGapSdMm());
    }

    static void outlook(DataOutputStream out, HeatOutlook outlook) throws IOException {
        numbers(out, outlook.radiusMm());
        ProposedSetting proposed = outlook.proposed().orElseThrow();
        setting(out, proposed.setting());
        run(out, proposed.run());
        spread(out, proposed.spread());
        out.writeUTF(proposed.death().name());
        out.writeBoolean(proposed.staysWithinLimits());
        out.writeUTF(proposed.limit().name());
    }

    private static void setting(DataOutputStream out, HeatSetting setting) throws IOException {
        if (setting instanceof HeatSetting.Pulled pulled) {
            out.writeByte(HeatBytes.PULLED);
            numbers(out, pulled.powerW(), pulled.pullbackSPerCm());
        } else if (setting instanceof HeatSetting.Held held) {
            out.writeByte(HeatBytes.HELD);
            out.writeInt(held.cycles());
        } else {
            out.writeByte(HeatBytes.PULSED);
            numbers(out, ((HeatSetting.Pulsed) setting).pulsesPerCm());
        }
    }

    private static void run(DataOutputStream out, HeatRun run) throws IOException {
        numbers(
                out,
                run.wallMm(),
                run.killDepthMm(),
                run.delayedDepthMm(),
                run.dryDepthMm(),
                run.innerWallDryness(),
                run.charIndex(),
                run.perforationIndex(),
                run.innerWallPeakC(),
                run.outerWallPeakC());
        point(out, run.nerve());
        point(out, run.skin());
        energy(out, run.energy());
        int flags = 0;
        for (HeatFlag flag : run.flags()) {
            flags |= 1 << flag.ordinal();
        }
        out.writeInt(flags);
    }

    private static void point(DataOutputStream out, Optional<WarmedPoint> point) throws IOException {
        out.writeBoolean(point.isPresent());
        if (point.isPresent()) {
            numbers(out, point.get().gapMm(), point.get().peakC(), point.get().cem43Min());
        }
    }

    private static void energy(DataOutputStream out, EnergyBook book) throws IOException {
        numbers(
                out,
                book.sourceJPerCm(),
                book.condensedJPerCm(),
                book.steamJPerCm(),
                book.steamSensibleJPerCm(),
                book.removedJPerCm(),
                book.outflowJPerCm(),
                book.perfusionJPerCm(),
                book.storedJPerCm(),
                book.undeliveredJPerCm());
    }

    private static void spread(DataOutputStream out, HeatSpread spread) throws IOException {
        out.writeInt(spread.draws());
        numbers(out, spread.killProbability(), spread.delayedProbability(), spread.charProbability());
        interval(out, spread.killDepthMm());
        interval(out, spread.killDepthPerWall());
        interval(out, spread.delayedDepthPerWall());
        interval(out, spread.perforationIndex());
        warmed(out, spread.nerve());
        warmed(out, spread.skin());
    }

    private static void warmed(DataOutputStream out, Optional<WarmedSpread> warmed) throws IOException {
        out.writeBoolean(warmed.isPresent());
        if (warmed.isPresent()) {
            interval(out, warmed.get().peakC());
            interval(out, warmed.get().cem43Min());
        }
    }

    private static void interval(DataOutputStream out, Interval interval) throws IOException {
        numbers(out, interval.p10(), interval.p50(), interval.p90());
    }

    private static void numbers(DataOutputStream out, double... numbers) throws IOException {
        for (double number : numbers) {
            out.writeDouble(number);
        }
    }
}
