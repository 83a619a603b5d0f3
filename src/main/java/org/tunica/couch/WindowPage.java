package org.tunica.couch;

import java.util.List;
import java.util.Optional;
import org.tunica.frame.Frame;
import org.tunica.pages.PointView;
import org.tunica.physics.SettingReach;
import org.tunica.picture.ChartWords;
import org.tunica.picture.WindowMap;

/**
 * What settings of a heat device do to the wall of one segment.
 *
 * @param at address of the page
 * @param subtitle the wall it holds for
 * @param standing how the technique stands in the advice
 * @param form what can be moved; none for a device that only repeats
 * @param repeats the table of a device that only repeats
 */
public record WindowPage(
        Frame frame,
        String caseRef,
        String at,
        String subtitle,
        String standing,
        Optional<Form> form,
        Optional<ChartWords> repeats) {

    /**
     * A setting that can be moved.
     *
     * @param starts where the setting shown comes from
     * @param powerW as it was typed or is proposed
     * @param pullbackSPerCm likewise
     * @param point what it does, or why nothing can be told
     * @param map the map around it, when it is computed
     */
    public record Form(
            String starts, String powerW, String pullbackSPerCm, SettingReach reach, Point point, Optional<Map> map) {}

    /** What a setting does; or faults alone. */
    public record Point(List<String> faults, Optional<PointView> view) {
        public Point {
            faults = List.copyOf(faults);
        }
    }

    /**
     * A map with its words.
     *
     * @param svg with a cross on the setting shown
     * @param place where settings lie in it
     */
    public record Map(String svg, WindowMap place, ChartWords words) {}
}
