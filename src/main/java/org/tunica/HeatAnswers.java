package org.tunica;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.tunica.casefile.CaseFile;
import org.tunica.heat.BenchFile;
import org.tunica.heat.Calibration;
import org.tunica.heat.CalibrationReport;
import org.tunica.heat.HeatNumbers;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.ProposedChange;
import org.tunica.knowledge.Standing;
import org.tunica.physics.Physics;
import org.tunica.physics.SegmentWindow;
import org.tunica.physics.SettingReach;
import org.tunica.physics.WindowPoint;
import org.tunica.picture.ChartWords;
import org.tunica.picture.WindowMap;
import org.tunica.picture.WindowPicture;
import org.tunica.picture.WindowWords;
import org.tunica.plan.Advice;
import org.tunica.plan.SegmentAdvice;

/** Everything a user can ask about the settings of heat devices. Immutable. */
public final class HeatAnswers {
    private final Knowledge knowledge;
    private final Physics physics;
    private final Advice.Release release;
    private final Function<CaseFile, Advice> advice;
    private final Asked asked;

    HeatAnswers(Knowledge knowledge, Physics physics, Advice.Release release, Function<CaseFile, Advice> advice) {
        this.knowledge = knowledge;
        this.physics = physics;
        this.release = release;
        this.advice = advice;
        this.asked = new Asked(knowledge);
    }

    /**
     * What the settings of a heat device do to the wall of one segment.
     *
     * @throws org.tunica.casefile.FaultyInput for an unknown segment or technique, a technique that is no heat device, a
     *     measurement that is missing, or a wall the heat model does not answer for
     */
    public SegmentWindow heatWindow(CaseFile caseFile, String segmentRef, String techniqueId) {
        return judged(caseFile, physics.heatWindows().of(caseFile, asked.segment(caseFile, segmentRef), techniqueId));
    }

    /**
     * The same without its map, which takes seconds to compute.
     *
     * @throws org.tunica.casefile.FaultyInput as {@link #heatWindow}
     */
    public SegmentWindow outline(CaseFile caseFile, String segmentRef, String techniqueId) {
        return judged(
                caseFile, physics.heatWindows().outline(caseFile, asked.segment(caseFile, segmentRef), techniqueId));
    }

    private SegmentWindow judged(CaseFile caseFile, SegmentWindow window) {
        SegmentAdvice judged =
                advice.apply(caseFile.only(window.segment().ref())).segments().get(0);
        return judged.options().stream()
                .filter(option -> option.technique().equals(window.technique().id()))
                .map(option -> window.standing(
                        "In the advice for this segment of the "
                                + judged.side().word().toUpperCase(Locale.ROOT) + " leg the technique stands as "
                                + option.standing().word().replace('-', ' ') + ": " + option.why() + ".",
                        option.standing().ranked()))
                .findFirst()
                .orElse(window);
    }

    /**
     * What one power and pull-back do to the wall of one segment, by the model itself and not read from a map.
     *
     * @throws org.tunica.casefile.FaultyInput as {@link #heatWindow}, also for a device that is not drawn back and for
     *     numbers the model does not answer for
     */
    public WindowPoint point(
            CaseFile caseFile, String segmentRef, String techniqueId, double powerW, double pullbackSPerCm) {
        return physics.heatWindows()
                .point(caseFile, asked.segment(caseFile, segmentRef), techniqueId, powerW, pullbackSPerCm);
    }

    /** The wall a window holds for, in a sentence. */
    public String subtitle(SegmentWindow window) {
        return WindowWords.subtitle(window);
    }

    /** What can be set on a device that is drawn back. */
    public SettingReach reach() {
        return physics.heatWindows().reach();
    }

    /** The words and the table that go with a heat window. */
    public ChartWords words(SegmentWindow window) {
        return WindowWords.of(window, release);
    }

    /**
     * A heat window as a drawing.
     *
     * @param widthPx width, see {@link WindowPicture}
     */
    public WindowPicture picture(SegmentWindow window, int widthPx) {
        return WindowPicture.of(window, words(window), widthPx);
    }

    /** The map of a heat window alone, for a page that has heading, table and notes itself; none when it has no map. */
    public Optional<WindowMap> map(SegmentWindow window) {
        return WindowMap.of(window, words(window));
    }

    /**
     * Fits constants of the heat model to the bench measurements of a laboratory.
     *
     * @param what the name of the input, for messages
     * @param freeIds the constants that may move; empty for those of local standing that move a depth of the file
     * @throws org.tunica.casefile.FaultyInput with every fault of the file by line and column, or of the constants
     */
    public CalibrationReport calibrate(String what, byte[] csv, List<String> freeIds) {
        Calibration calibration = Calibration.of(new HeatNumbers(
                knowledge::value,
                id -> knowledge.quantity(id).low().orElse(knowledge.value(id)),
                id -> knowledge.quantity(id).high().orElse(knowledge.value(id))));
        BenchFile bench = calibration.read(what, csv);
        return calibration.fit(bench, freeIds.isEmpty() ? calibration.acting(bench, this::local) : freeIds);
    }

    private boolean local(String id) {
        return knowledge.quantity(id).provenance().standing() == Standing.LOCAL;
    }

    /**
     * The change of knowledge a fit would propose; nothing of it is in force.
     *
     * @throws org.tunica.casefile.FaultyInput when the bench file names no date, the fit did not come to rest or a constant
     *     is not fixed by the data
     */
    public ProposedChange propose(CalibrationReport report) {
        return new CalibrationProposal(knowledge, report).change();
    }
}
