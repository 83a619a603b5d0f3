package org.tunica.heat;

/**
 * A setting to consider; the physician, the device's instructions and the local protocol decide.
 *
 * @param setting the setting
 * @param run what it does to the slice as measured, with the constants as they stand
 * @param spread what it does over all that is not known
 * @param death how the whole wall is expected to die with the wished probability, if it is
 * @param staysWithinLimits whether char, perforation, nerve and skin keep their limits
 * @param limit what keeps a stronger setting from being proposed
 */
public record ProposedSetting(
        HeatSetting setting,
        HeatRun run,
        HeatSpread spread,
        Death death,
        boolean staysWithinLimits,
        SettingLimit limit) {

    /** The same setting with another spread. */
    public ProposedSetting with(HeatSpread newSpread) {
        return new ProposedSetting(setting, run, newSpread, death, staysWithinLimits, limit);
    }
}
