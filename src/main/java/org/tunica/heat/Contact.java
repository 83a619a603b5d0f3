package org.tunica.heat;

/** How a device lies in the vein. */
enum Contact {
    /** In the middle. */
    CONCENTRIC,
    /** The side of the wall a forward tip leans on. */
    NEAR_SIDE,
    /** The side of the wall away from a leaning tip. */
    FAR_SIDE
}
