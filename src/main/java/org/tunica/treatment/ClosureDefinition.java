package org.tunica.treatment;

import org.tunica.casefile.Word;

/** When a treated vein counts as closed. Trials differ, so a figure of success means nothing without its definition. */
public enum ClosureDefinition implements Word {
    /** An open stump of limited length is allowed (S-0022, from memory). */
    ADHESIVE_OPEN_STUMP("follow-up.adhesive.open-stump.max") {
        @Override
        boolean allows(double treatedCm, double openCm, FollowUpLimits limits) {
            return openCm <= limits.adhesiveOpenStumpMaxCm();
        }
    },
    /** An open part of limited length is allowed (S-0023). */
    MECHANOCHEMICAL_OPEN_PART("follow-up.mechanochemical.open-part.max") {
        @Override
        boolean allows(double treatedCm, double openCm, FollowUpLimits limits) {
            return openCm <= limits.mechanochemicalOpenPartMaxCm();
        }
    },
    /** So much of the treated length must be occluded (S-0023, S-0024). */
    MECHANOCHEMICAL_OCCLUDED_SHARE("follow-up.mechanochemical.occluded-share.min") {
        @Override
        boolean allows(double treatedCm, double openCm, FollowUpLimits limits) {
            return occludedShare(treatedCm, openCm) >= limits.mechanochemicalOccludedShareMin();
        }
    },
    /** After laser or radiofrequency: an open part of limited length is allowed (S-0022, from memory). */
    HEAT_OPEN_PART("follow-up.heat.open-part.max") {
        @Override
        boolean allows(double treatedCm, double openCm, FollowUpLimits limits) {
            return openCm <= limits.heatOpenPartMaxCm();
        }
    },
    /** After laser or radiofrequency: no flow is left anywhere in the treated length (S-1101). */
    HEAT_NO_FLOW("follow-up.heat.no-flow.max") {
        @Override
        boolean allows(double treatedCm, double openCm, FollowUpLimits limits) {
            return openCm <= limits.heatNoFlowMaxCm();
        }
    };

    private final String limitId;

    ClosureDefinition(String limitId) {
        this.limitId = limitId;
    }

    /** The number of knowledge/ that decides, with its words and source. */
    public String limitId() {
        return limitId;
    }

    abstract boolean allows(double treatedCm, double openCm, FollowUpLimits limits);

    /**
     * Whether a vein counts as closed.
     *
     * @param treatedCm length treated, cm
     * @param openCm length found open, cm, at most the length treated
     */
    public boolean closed(double treatedCm, double openCm, FollowUpLimits limits) {
        occludedShare(treatedCm, openCm);
        return allows(treatedCm, openCm, limits);
    }

    /** Share of the treated length that is occluded, 0 to 1. */
    public static double occludedShare(double treatedCm, double openCm) {
        Checked.positive("treatedCm", treatedCm);
        Checked.within("openCm", openCm, 0, treatedCm);
        return (treatedCm - openCm) / treatedCm;
    }
}
