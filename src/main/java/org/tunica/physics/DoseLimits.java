package org.tunica.physics;

import java.util.List;
import org.tunica.knowledge.Knowledge;

/**
 * The dose limits the arithmetic of {@link Doses} uses; each is a quantity of knowledge/doses.yaml with source and
 * standing.
 */
record DoseLimits(
        double polidocanolMgPerKg,
        double polidocanolLiquidSessionMl,
        double foamSessionMl,
        double stsStrongLiquidSessionMl,
        double lidocainePlainMgPerKg,
        double lidocainePlainMg,
        double lidocaineAdrenalineMgPerKg,
        double lidocaineAdrenalineMg,
        double tumescentConfirmMgPerKg,
        double tumescentStopMgPerKg) {

    /** The ids in knowledge/doses.yaml, in the order of the components. */
    public static final List<String> IDS = List.of(
            "dose.polidocanol.day",
            "dose.polidocanol.liquid-session",
            "dose.foam.session",
            "dose.sts.strong-liquid-session",
            "dose.lidocaine.plain-by-weight",
            "dose.lidocaine.plain",
            "dose.lidocaine.adrenaline-by-weight",
            "dose.lidocaine.adrenaline",
            "dose.tumescent.confirm",
            "dose.tumescent.stop");

    /** The limits of a release. */
    public static DoseLimits of(Knowledge knowledge) {
        double[] v = IDS.stream().mapToDouble(knowledge::value).toArray();
        return new DoseLimits(v[0], v[1], v[2], v[3], v[4], v[5], v[6], v[7], v[8], v[9]);
    }
}
