package org.tunica.heat;

/** The two damage rates of a set of constants, tabulated. */
record RateTables(RateTable necrosis, RateTable delayed) {
    RateTables(TissueConstants tissue) {
        this(
                new RateTable(tissue.necrosis(), tissue.damageFloorC()),
                new RateTable(tissue.delayed(), tissue.damageFloorC()));
    }
}
