package org.tunica.heat;

/** What is set on a heat device. The energy per length is never told without its power and pull-back. */
public sealed interface HeatSetting {
    /** Id of the device, see {@link HeatModel#devices()}. */
    String deviceId();

    /** The same setting after all its numbers were held against the range the model answers for. */
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

        @Override
        public void checkAgainst(Validity validity) {
            validity.pulses().check("pulsesPerCm", pulsesPerCm);
        }
    }
}
