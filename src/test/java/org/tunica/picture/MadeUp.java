package org.tunica.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tunica.plan.Advice;
import org.tunica.statistics.CusumDesign;
import org.tunica.statistics.FollowedCase;
import org.tunica.statistics.Funnel;
import org.tunica.statistics.FunnelGroup;
import org.tunica.statistics.KaplanMeier;
import org.tunica.statistics.LogRank;
import org.tunica.statistics.OutcomeCusum;
import org.tunica.statistics.RiskedOutcome;

/** Charts of invented cases. */
public final class MadeUp {
    private static final Advice.Release RELEASE = new Advice.Release("7", Advice.Release.State.DRAFT, "none");

    private MadeUp() {}

    private static ChartHead head(String title) {
        return new ChartHead(title, "Invented cases <of> nobody & nowhere.", List.of("INVENTED."), RELEASE);
    }

    /** Ten cases of which two failed, and ten of which six did. */
    public static SurvivalChart survival() {
        List<FollowedCase> fibre = cases(new int[] {100, 300}, new int[] {30, 365, 365, 365, 365, 730, 730, 730});
        List<FollowedCase> foam = cases(new int[] {30, 100, 100, 300, 300, 400}, new int[] {90, 365, 365, 500});
        return new SurvivalChart(
                head("Share still closed"),
                "closed",
                List.of(group("radial fibre", fibre), group("foam", foam)),
                List.of(730, 30, 365),
                LogRank.of(fibre, foam));
    }

    /** Twenty cases of which one failed: the curve stays in the upper half. */
    public static SurvivalChart highSurvival() {
        int[] looks = IntStream.range(0, 59).map(i -> 365).toArray();
        return new SurvivalChart(
                head("Share still closed"),
                "closed",
                List.of(group("steam", cases(new int[] {200}, looks))),
                List.of(365),
                Optional.empty());
    }

    private static SurvivalChart.Group group(String name, List<FollowedCase> cases) {
        return new SurvivalChart.Group(name, KaplanMeier.of(cases, 0.95));
    }

    private static List<FollowedCase> cases(int[] failed, int[] lastLooks) {
        List<FollowedCase> cases = new ArrayList<>();
        IntStream.of(failed).forEach(day -> cases.add(new FollowedCase(day, true)));
        IntStream.of(lastLooks).forEach(day -> cases.add(new FollowedCase(day, false)));
        return cases;
    }

    /** Thirty cases at a predicted chance of one in ten; those named failed. */
    public static CusumChart cusum(double worseLimit, Integer... failed) {
        List<RiskedOutcome> outcomes = IntStream.rangeClosed(1, 30)
                .mapToObj(number -> new RiskedOutcome(0.1, List.of(failed).contains(number)))
                .toList();
        return new CusumChart(
                head("Results against predictions"),
                "open at one year",
                OutcomeCusum.of(outcomes, new CusumDesign(2, 0.5, worseLimit, 1.1)));
    }

    public static FunnelChart funnel(FunnelChart.Kind kind) {
        return new FunnelChart(
                head("Open at one year"),
                "open at one year",
                kind,
                Funnel.against(
                        0.1,
                        List.of(
                                new FunnelGroup("north", 10, 100),
                                new FunnelGroup("east", 17, 100),
                                new FunnelGroup("south", 61, 400),
                                new FunnelGroup("west", 28, 400))));
    }
}
