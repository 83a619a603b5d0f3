package org.tunica.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** What is set on a heat device. The energy per length is never told without its power and pull-back. */
public sealed interface HeatSetting {
    /** Id of the device, see {@link HeatModel#devices()}. */
    String deviceId();

    /**
     * Holds every number against the range the model answers for.
     *
     * @throws IllegalArgumentException with the name and value of the first outside it
     */
    void checkAgainst(Validity validity);

    /**
     * A device drawn back steadily.
     *
     * @param pullbackSPerCm time spent on one centimetre
     */
    record Pulled(String deviceId, double powerW, double pullbackSPerCm) implements HeatSetting {
        public Pulled {
            Checks.positive("powerW", powerW);
            Checks.positive("pullbackSPerCm", pullbackSPerCm);
        }

        /** Linear energy set, J/cm. */
        public double energyJPerCm() {
            return powerW * pullbackSPerCm;
        }

        /** Every setting offered: one ladder a power, highest power first, each from the shortest to the longest time. */
        static List<List<HeatSetting>> ladders(String deviceId, HeatLimits limits) {
            List<List<HeatSetting>> ladders = new ArrayList<>();
            for (int i = limits.powerW().count() - 1; i >= 0; i--) {
                List<HeatSetting> ladder = ladder(deviceId, limits.powerW().at(i), limits);
                if (!ladder.isEmpty()) {
                    ladders.add(ladder);
                }
            }
            return ladders;
        }

        private static List<HeatSetting> ladder(String deviceId, double powerW, HeatLimits limits) {
            List<HeatSetting> ladder = new ArrayList<>();
            for (int i = 0; i < limits.pullbackSPerCm().count(); i++) {
                Pulled setting =
                        new Pulled(deviceId, powerW, limits.pullbackSPerCm().at(i));
                if (setting.energyJPerCm() >= limits.leastEnergyJPerCm()
                        && setting.energyJPerCm() <= limits.mostEnergyJPerCm()) {
                    ladder.add(setting);
                }
            }
            return ladder;
        }

        @Override
        public void checkAgainst(Validity validity) {
            validity.power().check("powerW", powerW);
            validity.pullback().check("pullbackSPerCm", pullbackSPerCm);
        }
    }

    /** A contact element held in place for a number of cycles. */
    record Held(String deviceId, int cycles) implements HeatSetting {
        public Held {
            Checks.positive("cycles", cycles);
        }

        /** One ladder from one cycle to the most allowed. */
        static List<List<HeatSetting>> ladders(String deviceId, HeatLimits limits) {
            return List.of(IntStream.rangeClosed(1, limits.mostCycles())
                    .<HeatSetting>mapToObj(cycles -> new Held(deviceId, cycles))
                    .toList());
        }

        @Override
        public void checkAgainst(Validity validity) {
            validity.cycles().check("cycles", cycles);
        }
    }

    /** Steam given in pulses while drawn back. */
    record Pulsed(String deviceId, double pulsesPerCm) implements HeatSetting {
        public Pulsed {
            Checks.positive("pulsesPerCm", pulsesPerCm);
        }

        /** One ladder from one pulse to the most allowed. */
        static List<List<HeatSetting>> ladders(String deviceId, HeatLimits limits) {
            return List.of(IntStream.rangeClosed(1, limits.mostPulsesPerCm())
                    .<HeatSetting>mapToObj(pulses -> new Pulsed(deviceId, pulses))
                    .toList());
        }

        @Override
        public void checkAgainst(Validity validity) {
            validity.pulses().check("pulsesPerCm", pulsesPerCm);
        }
    }
}
