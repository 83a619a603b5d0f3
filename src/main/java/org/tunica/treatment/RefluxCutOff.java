package org.tunica.treatment;

/** From when reflux counts, by the kind of vein (S-0010, read at second hand). */
public enum RefluxCutOff {
    /** Saphenous and accessory trunks, tibial, deep femoral and perforating veins. */
    SUPERFICIAL,
    /** Common femoral, femoral and popliteal vein. */
    DEEP;

    /** Whether a reflux time in s counts as reflux; the cut-off itself does not. */
    public boolean refluxes(double refluxS, FollowUpLimits limits) {
        Checked.within("refluxS", refluxS, 0, Double.MAX_VALUE);
        return refluxS > (this == DEEP ? limits.deepRefluxOverS() : limits.superficialRefluxOverS());
    }
}
