package org.tunica.replay;

import java.io.DataInputStream;
import java.io.IOException;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.tunica.heat.Death;
import org.tunica.heat.EnergyBook;
import org.tunica.heat.HeatFlag;
import org.tunica.heat.HeatRun;
import org.tunica.heat.HeatSetting;
import org.tunica.heat.HeatSpread;
import org.tunica.heat.Interval;
import org.tunica.heat.MeasurementSpread;
import org.tunica.heat.ProposedSetting;
import org.tunica.heat.SettingLimit;
import org.tunica.heat.WarmedPoint;
import org.tunica.heat.WarmedSpread;
import org.tunica.physics.HeatOutlook;
import org.tunica.physics.HeatQuestion;

/** Reads what {@link HeatWriter} wrote, in the same order. */
final class HeatBytes {
    static final int PULLED = 1;
    static final int HELD = 2;
    static final int PULSED = 3;

    private HeatBytes() {}

    static HeatQuestion question(DataInputStream in) throws IOException {
        String device = in.readUTF();
        boolean blood = in.readBoolean();
        boolean chilled = in.readBoolean();
        double wallMm = in.readDouble();
        double nerveGapMm = in.readDouble();
        double skinGapMm = in.readDouble();
        MeasurementSpread spread =
                new MeasurementSpread(in.readDouble(), in.readDouble(), in.readDouble(), in.readDouble());
        return new HeatQuestion(device, wallMm, blood, chilled, nerveGapMm, skinGapMm, spread);
    }

    static HeatOutlook outlook(DataInputStream in, HeatQuestion question) throws IOException {
        double radiusMm = in.readDouble();
        HeatSetting setting = setting(in, question.device());
        ProposedSetting proposed = new ProposedSetting(
                setting,
                run(in, setting),
                spread(in, setting),
                Death.valueOf(in.readUTF()),
                in.readBoolean(),
                SettingLimit.valueOf(in.readUTF()));
        return new HeatOutlook(radiusMm, question.wallMm(), Optional.of(proposed), "");
    }

    private static HeatSetting setting(DataInputStream in, String device) throws IOException {
        int kind = in.readByte();
        return switch (kind) {
            case PULLED -> new HeatSetting.Pulled(device, in.readDouble(), in.readDouble());
            case HELD -> new HeatSetting.Held(device, in.readInt());
            case PULSED -> new HeatSetting.Pulsed(device, in.readDouble());
            default -> throw new IOException("no kind of setting: " + kind);
        };
    }

    private static HeatRun run(DataInputStream in, HeatSetting setting) throws IOException {
        return new HeatRun(
                setting,
                in.readDouble(),
                in.readDouble(),
                in.readDouble(),
                in.readDouble(),
                in.readDouble(),
                in.readDouble(),
                in.readDouble(),
                in.readDouble(),
                in.readDouble(),
                point(in),
                point(in),
                energy(in),
                flags(in.readInt()));
    }

    private static Optional<WarmedPoint> point(DataInputStream in) throws IOException {
        return in.readBoolean()
                ? Optional.of(new WarmedPoint(in.readDouble(), in.readDouble(), in.readDouble()))
                : Optional.empty();
    }

    private static EnergyBook energy(DataInputStream in) throws IOException {
        return new EnergyBook(
                in.readDouble(),
                in.readDouble(),
                in.readDouble(),
                in.readDouble(),
                in.readDouble(),
                in.readDouble(),
                in.readDouble(),
                in.readDouble(),
                in.readDouble());
    }

    private static Set<HeatFlag> flags(int bits) {
        Set<HeatFlag> flags = EnumSet.noneOf(HeatFlag.class);
        for (HeatFlag flag : HeatFlag.values()) {
            if ((bits & 1 << flag.ordinal()) != 0) {
                flags.add(flag);
            }
        }
        return flags;
    }

    private static HeatSpread spread(DataInputStream in, HeatSetting setting) throws IOException {
        return new HeatSpread(
                setting,
                in.readInt(),
                in.readDouble(),
                in.readDouble(),
                in.readDouble(),
                interval(in),
                interval(in),
                interval(in),
                interval(in),
                warmed(in),
                warmed(in));
    }

    private static Optional<WarmedSpread> warmed(DataInputStream in) throws IOException {
        return in.readBoolean() ? Optional.of(new WarmedSpread(interval(in), interval(in))) : Optional.empty();
    }

    private static Interval interval(DataInputStream in) throws IOException {
        return new Interval(in.readDouble(), in.readDouble(), in.readDouble());
    }
}
