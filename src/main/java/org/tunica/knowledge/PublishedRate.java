package org.tunica.knowledge;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How many treated veins stayed closed, as one source tells it.
 *
 * @param id for example {@code rate.trunk.laser.trial-of-two}
 * @param says what was counted, in words
 * @param techniques ids of the techniques it speaks of
 * @param veins words of the veins it speaks of
 * @param share closed, 0 to 1
 * @param treated number of veins behind the share; absent where the source gives an interval
 * @param low lower end of the interval the source gives
 * @param high upper end
 * @param months from treatment to the count
 * @param measuredWith with what it was measured; there whenever it stands for several techniques
 */
public record PublishedRate(
        String id,
        String says,
        List<String> techniques,
        List<String> veins,
        double share,
        OptionalDouble treated,
        OptionalDouble low,
        OptionalDouble high,
        double months,
        Optional<String> measuredWith,
        Provenance provenance) {
    public PublishedRate {
        techniques = List.copyOf(techniques);
        veins = List.copyOf(veins);
    }
}
