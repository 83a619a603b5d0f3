package org.tunica.session;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.tunica.knowledge.Knowledge;

/** Writes one session: its totals against the limits, what must be ready, and its time. */
final class SessionWriter {
    private static final MathContext FOUR_DIGITS = new MathContext(4);
    private static final MathContext DOWN = new MathContext(4, RoundingMode.DOWN);

    /** Digits that a division leaves true. */
    private static final MathContext NOISE = new MathContext(12);

    private final Knowledge knowledge;
    private final SessionConstants constants;

    SessionWriter(Knowledge knowledge, SessionConstants constants) {
        this.knowledge = knowledge;
        this.constants = constants;
    }

    SessionPlan.Session write(
            int number, List<SessionPlan.Step> steps, List<Candidate> chosen, Map<Shared, SharedLimit> limits) {
        List<TimePart> overhead = overhead(chosen);
        double minutes = overhead.stream().mapToDouble(TimePart::workMinutes).sum()
                + chosen.stream()
                        .mapToDouble(one -> one.demand().amount(Shared.TIME))
                        .sum();
        return new SessionPlan.Session(
                number,
                steps,
                totals(chosen, minutes, limits),
                new Preparation(knowledge).of(chosen),
                overhead,
                OptionalDouble.of(rounded(minutes)));
    }

    private List<TimePart> overhead(List<Candidate> chosen) {
        List<TimePart> parts = new ArrayList<>();
        parts.add(new TimePart("preparing and first scan", constants.of("session.time.start")));
        generators(chosen)
                .forEach(name -> parts.add(new TimePart("setting up " + name, constants.of("session.time.generator"))));
        if (chosen.stream().anyMatch(one -> one.demand().position() == Position.PRONE)) {
            parts.add(new TimePart("turning the patient", constants.of("session.time.turn")));
        }
        parts.add(new TimePart("last scan and dressing", constants.of("session.time.close")));
        return parts;
    }

    static Set<String> generators(List<Candidate> chosen) {
        Set<String> names = new LinkedHashSet<>();
        chosen.forEach(one -> one.demand().generator().ifPresent(names::add));
        return names;
    }

    private static List<SessionPlan.Total> totals(
            List<Candidate> chosen, double minutes, Map<Shared, SharedLimit> limits) {
        List<SessionPlan.Total> totals = new ArrayList<>();
        Map<Shared, Double> sums =
                Demand.sum(chosen.stream().map(Candidate::demand).toList());
        for (Shared shared : Shared.AMOUNTS) {
            double amount = shared == Shared.TIME ? minutes : sums.getOrDefault(shared, 0.0);
            if (amount > 0) {
                totals.add(total(shared, amount, Optional.ofNullable(limits.get(shared))));
            }
        }
        return totals;
    }

    static SessionPlan.Total total(Shared shared, double amount, Optional<SharedLimit> limit) {
        return new SessionPlan.Total(
                shared,
                shared.says(),
                rounded(amount),
                shared.unit(),
                limit.map(most -> OptionalDouble.of(roundedDown(most.limit()))).orElse(OptionalDouble.empty()),
                limit.map(SharedLimit::id),
                limit.flatMap(most -> warning(shared, amount, most)));
    }

    private static Optional<String> warning(Shared shared, double amount, SharedLimit limit) {
        if (amount > limit.limit()) {
            return Optional.of(
                    "more than that, because one vein takes it by itself: a person confirms it, or it is given in"
                            + " two sessions");
        }
        return limit.line()
                .filter(line -> amount > line.at())
                .map(line -> "above " + plain(line.at()) + " " + shared.unit()
                        + ", the line at which a person confirms the dose (" + line.id() + ")")
                .or(limit::note);
    }

    private static String plain(double value) {
        return new BigDecimal(value).round(FOUR_DIGITS).stripTrailingZeros().toPlainString();
    }

    /** A limit that was rounded up would make room. */
    private static double roundedDown(double limit) {
        return new BigDecimal(limit).round(NOISE).round(DOWN).doubleValue();
    }

    static double rounded(double value) {
        return new BigDecimal(value).round(FOUR_DIGITS).doubleValue();
    }
}
