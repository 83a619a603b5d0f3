package org.tunica.pages;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tunica.casefile.UcumWords;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.session.SessionPlan;
import org.tunica.session.Shared;
import org.tunica.wording.SettingWords;

/** The bars of one session of a plan: drugs, foam, time, generators, and how often the patient is turned. */
final class ShareBars {
    private static final String GENERATORS = "session.generators.most";
    private static final double FEW_MG = 10;
    private static final String OF_THE_CASE = "room.";

    private final SessionPlan plan;
    private final SessionPlan.Session session;
    private final Knowledge knowledge;

    ShareBars(SessionPlan plan, SessionPlan.Session session, Knowledge knowledge) {
        this.plan = plan;
        this.session = session;
        this.knowledge = knowledge;
    }

    List<ShareBar> all() {
        List<ShareBar> bars = new ArrayList<>();
        session.totals().forEach(total -> bars.add(bar(total)));
        bars.add(generators());
        bars.add(turns());
        return bars;
    }

    private ShareBar bar(SessionPlan.Total total) {
        if (total.shared() == Shared.TETRADECYL) {
            return new ShareBar(
                    total.says(),
                    "shares of its forms and strengths",
                    "together one whole",
                    taken(total),
                    origin(total.limitId().orElse("")),
                    total.warning().orElse(""),
                    notes(total.limitId().orElse("")));
        }
        String unit = UcumWords.behind(total.unit());
        return new ShareBar(
                total.says(),
                amount(total.amount(), total.shared(), unit, RoundingMode.UP),
                total.limit().isPresent()
                        ? "at most " + amount(total.limit().getAsDouble(), total.shared(), unit, RoundingMode.DOWN)
                        : "no limit recorded",
                taken(total),
                total.limitId().map(this::origin).orElse(""),
                total.warning().orElse(""),
                notes(total.limitId().orElse("")));
    }

    private static OptionalDouble taken(SessionPlan.Total total) {
        return total.limit().isPresent()
                ? OptionalDouble.of(total.amount() / total.limit().getAsDouble())
                : OptionalDouble.empty();
    }

    /** A dose by weight is told in milligrams, too: that is what is drawn up. Rounding never makes room. */
    private String amount(double value, Shared shared, String unit, RoundingMode rounding) {
        String says = SettingWords.plain(value) + unit;
        OptionalDouble weightKg = plan.caseFile().patient().weightKg();
        boolean byWeight = shared == Shared.LIDOCAINE || shared == Shared.POLIDOCANOL;
        return byWeight && weightKg.isPresent()
                ? says + " (" + milligrams(value * weightKg.getAsDouble(), rounding) + " mg at "
                        + SettingWords.plain(weightKg.getAsDouble()) + " kg)"
                : says;
    }

    private static String milligrams(double mg, RoundingMode rounding) {
        return BigDecimal.valueOf(mg)
                .setScale(1, RoundingMode.HALF_EVEN)
                .setScale(mg < FEW_MG ? 1 : 0, rounding)
                .toPlainString();
    }

    private ShareBar generators() {
        Set<String> kinds = new TreeSet<>();
        session.steps()
                .forEach(step ->
                        knowledge.technique(step.technique()).generator().ifPresent(kinds::add));
        double most = knowledge.value(GENERATORS);
        return new ShareBar(
                Shared.GENERATOR.says(),
                kinds.isEmpty() ? "none" : kinds.size() + ": " + String.join(", ", kinds),
                "at most " + SettingWords.plain(most),
                OptionalDouble.of(kinds.size() / most),
                origin(GENERATORS),
                "",
                notes(GENERATORS));
    }

    private ShareBar turns() {
        List<String> positions = session.steps().stream()
                .map(step -> step.position().word().replace('-', ' '))
                .toList();
        int turns = 0;
        for (int i = 1; i < positions.size(); i++) {
            turns += positions.get(i).equals(positions.get(i - 1)) ? 0 : 1;
        }
        return new ShareBar(
                "changes of position",
                turns + " (" + positions.stream().distinct().collect(Collectors.joining(", then ")) + ")",
                "no limit set; each costs time",
                OptionalDouble.empty(),
                "",
                "",
                List.of());
    }

    private String origin(String ids) {
        return each(ids).map(this::one).collect(Collectors.joining("; "));
    }

    /** What a case itself records has no help: it is what somebody there said. */
    private List<NumberNote> notes(String ids) {
        return NumberNote.of(each(ids).filter(id -> !id.startsWith(OF_THE_CASE)).toList(), knowledge);
    }

    private static Stream<String> each(String ids) {
        return Arrays.stream(ids.split(", ")).filter(id -> !id.isEmpty());
    }

    private String one(String id) {
        if (id.startsWith(OF_THE_CASE)) {
            return "recorded in this case (" + id + ")";
        }
        Quantity limit = knowledge.quantity(id);
        return id + ", " + limit.provenance().standing().word() + ", "
                + knowledge.source(limit.provenance().source()).cites();
    }
}
