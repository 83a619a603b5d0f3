package org.tunica.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tunica.casefile.UcumWords;
import org.tunica.knowledge.Knowledge;
import org.tunica.plan.FirmnessAdvice;

/** How firm a ranking is, in few lines. */
public final class FirmnessWords {
    private static final int FEW = 2;
    private static final int DETAIL = 4;
    private static final double PERCENT = 100;

    private final Knowledge knowledge;
    private final boolean why;
    private final List<Line> lines = new ArrayList<>();

    /**
     * Words of a release.
     *
     * @param why tells all there is, not the few things most worth knowing
     */
    public FirmnessWords(Knowledge knowledge, boolean why) {
        this.knowledge = knowledge;
        this.why = why;
    }

    /** The lines, the most important first. */
    public List<Line> lines(FirmnessAdvice firmness) {
        lines.add(new Line(0, "How firm: " + firmness.says() + "." + changes(firmness)));
        firmness.preferences().forEach(preference -> lines.add(new Line(DETAIL, preference)));
        firmness.measureNext().stream()
                .limit(why ? firmness.measureNext().size() : 1)
                .forEach(missing -> lines.add(new Line(DETAIL, line(missing))));
        if (why) {
            details(firmness);
        }
        return lines;
    }

    /** " It would change with the wall thickness 0.435 mm in place of 0.38 (segmental RF, 7 cm element)." */
    private String changes(FirmnessAdvice firmness) {
        List<String> near = firmness.whatWouldChange().stream()
                .limit(why ? firmness.whatWouldChange().size() : FEW)
                .map(this::change)
                .toList();
        return near.isEmpty() ? "" : " It would change with " + String.join("; with ", near) + ".";
    }

    private String change(FirmnessAdvice.Change change) {
        String unit = UcumWords.behind(change.unit());
        String deviations = change.deviations().isPresent()
                ? ", " + SettingWords.plain(change.deviations().getAsDouble()) + " times its error"
                : "";
        return change.says() + " " + SettingWords.plain(change.at()) + unit + " in place of "
                + SettingWords.plain(change.recorded()) + deviations + " ("
                + change.leads().map(this::name).orElse("nothing could be ranked") + sought(change, unit) + ")";
    }

    private static String sought(FirmnessAdvice.Change change, String unit) {
        String held = SettingWords.plain(change.holdsAt()) + unit;
        return switch (change.sought()) {
            case CONFIRMED -> "";
            case SETTINGS_KEPT -> "; heat settings kept";
            case SOUGHT_ANEW -> "; heat settings sought anew, held at " + held;
            case NOT_FOUND -> "; with heat settings kept alone: sought anew, it holds as far as " + held;
        };
    }

    private String line(FirmnessAdvice.Missing missing) {
        String worth = missing.changesFirstShare().isPresent()
                ? "another technique would lead with "
                        + percent(missing.changesFirstShare().getAsDouble())
                        + " of the answers it could have, each counted alike"
                : "whether another technique would lead cannot be told before it is known";
        String waiting = missing.waiting().isEmpty()
                ? ""
                : "; techniques that wait for it: " + missing.waiting().size();
        return "measure or ask next: " + missing.noun() + ": " + worth + waiting;
    }

    private void details(FirmnessAdvice firmness) {
        lines.add(new Line(
                DETAIL,
                firmness.draws() + " draws of values and weights, " + firmness.judgedDraws()
                        + " of the measurements through all rules; where nothing else is said, closure, nerve, skin and rules weigh at least as much as a"
                        + " short session and few needles; shares of draws are no probabilities of healing"));
        firmness.options().forEach(option -> {
            lines.add(new Line(DETAIL, line(option)));
            rates(option).ifPresent(says -> lines.add(new Line(2 * DETAIL, says)));
        });
    }

    /** The rates behind lasting closure, and with what they were measured where they stand for a whole family. */
    private static Optional<String> rates(FirmnessAdvice.Option option) {
        if (option.rates().isEmpty()) {
            return Optional.empty();
        }
        String shares = option.rates().stream()
                .map(rate -> SettingWords.plain(PERCENT * rate.closedShare()) + " % (" + rate.source() + ")")
                .collect(Collectors.joining(", "));
        String with = option.rates().stream()
                .flatMap(rate -> rate.measuredWith().stream())
                .distinct()
                .collect(Collectors.joining("; "));
        return Optional.of("lasting closure drawn from " + shares
                + (with.isEmpty() ? "" : "; rates of its family, measured with " + with));
    }

    private String line(FirmnessAdvice.Option option) {
        String confidence = option.confidenceFactor().isPresent()
                ? "; confidence " + percent(option.confidenceFactor().getAsDouble())
                : "";
        String cost =
                option.costClass().map(known -> "; cost class " + known.word()).orElse("");
        String open = option.openCriteria().isEmpty() ? "" : "; " + String.join("; ", option.openCriteria());
        return name(option.technique()) + ": first in " + percent(option.firstPlaceShare()) + " of draws, ranked in "
                + percent(option.rankedShare()) + "; " + option.firstWhen() + confidence + cost + open;
    }

    private String name(String technique) {
        return knowledge.technique(technique).says();
    }

    private static String percent(double share) {
        return SettingWords.plain(Math.round(PERCENT * share)) + " %";
    }

    /** A line of text and how far it is set in. */
    public record Line(int indent, String text) {}
}
