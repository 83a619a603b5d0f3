package org.tunica.invented;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Technique;

/** Makes up a leg: its class, its incompetent veins, and by what each was treated. */
final class LegMaker {
    private static final Set<Segment.Vein> MANY = Set.of(Segment.Vein.TRIBUTARY, Segment.Vein.PERFORATOR);

    private final Choice<Limb.CeapClass> classes;
    private final Choice<Limb.DeepVeins> deepVeins;
    private final Curve ankleIndex;
    private final double ankleUnrecordedShare;
    private final Choice<Integer> counts;
    private final Choice<Segment.Vein> first;
    private final Choice<Segment.Vein> further;
    private final Map<Segment.Vein, Choice<Segment.Level>> levels = new EnumMap<>(Segment.Vein.class);
    private final Map<Segment.Vein, Choice<Segment.Course>> courses = new EnumMap<>(Segment.Vein.class);
    private final Map<Segment.Vein, Curve> lengthsCm = new EnumMap<>(Segment.Vein.class);
    private final Map<Segment.Course, Curve> straightShares = new EnumMap<>(Segment.Course.class);
    private final Curve belowKneeCm;
    private final Choice<Segment.Thrombus> thrombus;
    private final Ways ways;
    private final Scan scan;

    LegMaker(Knowledge knowledge) {
        this.classes = Choice.ofWords(knowledge.invented("invented.class"), Limb.CeapClass.class);
        this.deepVeins = Choice.ofWords(knowledge.invented("invented.deep-veins"), Limb.DeepVeins.class);
        this.ankleIndex = Curve.of(knowledge.invented("invented.ankle-index"));
        this.ankleUnrecordedShare = knowledge.invented("invented.unrecorded").number("ankle-index");
        this.counts = Choice.of(knowledge.invented("invented.segments"), Integer::valueOf);
        this.first = Choice.ofWords(knowledge.invented("invented.vein.first"), Segment.Vein.class);
        this.further = Choice.ofWords(knowledge.invented("invented.vein.further"), Segment.Vein.class);
        for (Segment.Vein vein : Segment.Vein.values()) {
            levels.put(vein, Choice.ofWords(knowledge.invented("invented.level." + vein.word()), Segment.Level.class));
            courses.put(
                    vein, Choice.ofWords(knowledge.invented("invented.course." + vein.word()), Segment.Course.class));
            lengthsCm.put(vein, Curve.of(knowledge.invented("invented.length." + vein.word())));
        }
        for (Segment.Course course : Segment.Course.values()) {
            straightShares.put(course, Curve.of(knowledge.invented("invented.straight." + course.word())));
        }
        this.belowKneeCm = Curve.of(knowledge.invented("invented.length.below-knee"));
        this.thrombus = Choice.ofWords(knowledge.invented("invented.thrombus"), Segment.Thrombus.class);
        this.ways = new Ways(knowledge);
        this.scan = new Scan(knowledge);
    }

    MadeLeg from(Draw draw, Limb.Side side, Person person, Set<String> devices) {
        Limb.CeapClass ceapClass = classes.from(draw);
        Limb.DeepVeins deep = deepVeins.from(draw);
        double index = Made.rounded(ankleIndex.from(draw), 2);
        int count = counts.from(draw);
        List<MadeSegment> segments = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Segment.Vein vein = i == 0 ? first.from(draw) : another(draw, segments);
            MadeLeg.Found found = found(draw, vein);
            Optional<Technique> technique = ways.of(draw, found, person, devices);
            String ref = side.word().substring(0, 1).toUpperCase(Locale.ROOT) + (i + 1);
            segments.add(scan.of(draw, ref, found, technique));
        }
        return new MadeLeg(side, ceapClass, deep, Made.recorded(draw, ankleUnrecordedShare, index), segments);
    }

    /** A leg has one of each trunk; tributaries and perforators may be several. */
    private Segment.Vein another(Draw draw, List<MadeSegment> segments) {
        return further.from(
                        draw,
                        vein -> MANY.contains(vein)
                                        || segments.stream()
                                                .noneMatch(one -> one.segment().vein() == vein)
                                ? 1
                                : 0)
                .orElseThrow();
    }

    private MadeLeg.Found found(Draw draw, Segment.Vein vein) {
        Segment.Level level = levels.get(vein).from(draw);
        Segment.Course course = courses.get(vein).from(draw);
        Curve length = Ways.belowKnee(vein, level) ? belowKneeCm : lengthsCm.get(vein);
        double lengthCm = Made.rounded(length.from(draw), vein == Segment.Vein.PERFORATOR ? 1 : 0);
        double straightCm = Made.rounded(lengthCm * straightShares.get(course).from(draw), 1);
        return new MadeLeg.Found(vein, level, course, thrombus.from(draw), lengthCm, straightCm);
    }
}
