package org.tunica.heat;

/** Why a heat result deserves less trust. */
public enum HeatFlag {
    /** No bench fact was compared for this device or wavelength. */
    NOT_CALIBRATED,
    /** Power or pull-back lies outside what the calibration looked at. */
    OUTSIDE_CALIBRATION,
    /** The film is told to hold more or less blood than an emptied vein. */
    BLOOD_NOT_AS_USUAL,
    /** The film is told to differ from the usual one of the device. */
    FILM_NOT_AS_USUAL,
    /** Heat runs along the vein faster than the source moves; a radial slice does not hold. */
    AXIAL_CONDUCTION,
    /** Beyond the onset of charring results depend on the time step and are not graded. */
    CHARRING
}
