package org.tunica.heat;

/** What keeps a heat setting from being stronger. */
public enum SettingLimit {
    /** Charring becomes likely. */
    CHAR,
    /** The whole wall dries; perforation is feared. */
    PERFORATION,
    /** The nerve would be warmed past its line. */
    NERVE,
    /** The skin would be warmed past its line. */
    SKIN,
    /** The longest time, the largest linear energy, most cycles or most pulses accepted. */
    LONGEST_TIME,
    /** The highest power accepted. */
    HIGHEST_POWER
}
