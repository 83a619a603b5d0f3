package org.tunica.fhir;

import java.util.Locale;
import org.tunica.plan.Advice;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.Reason;
import org.tunica.plan.SegmentAdvice;
import org.tunica.plan.SettingsAdvice;

/** How an advice is put in words for a record system: plain, short, with the side in full. */
final class Words {
    private Words() {}

    /** A segment, for example {@code LEFT great saphenous, thigh (L1)}. */
    static String of(SegmentAdvice segment) {
        return segment.side().word().toUpperCase(Locale.ROOT) + " "
                + segment.vein().word().replace('-', ' ') + ", "
                + segment.level().word().replace('-', ' ') + " (" + segment.ref() + ")";
    }

    /** The rules and knowledge in use. */
    static String of(Advice.Release release) {
        return release.state().word().toUpperCase(Locale.ROOT) + " rules " + release.version()
                + (release.state() == Advice.Release.State.DRAFT ? ", not signed by anyone" : "");
    }

    /** A reason with its rule, its sources and how well they carry it. */
    static String of(Reason reason) {
        String doubt = reason.inDoubt().isEmpty() ? "" : "; not recorded: " + String.join(", ", reason.inDoubt());
        return reason.title() + ": " + reason.says() + doubt + " (" + reason.rule() + ", " + reason.source() + ", "
                + reason.standing().word() + ")";
    }

    /** The setting proposed; a linear energy never stands without its power and its pullback. */
    static String setting(OptionAdvice option) {
        SettingsAdvice settings = option.settings();
        if (settings.powerW().isPresent()) {
            return plain(settings.powerW().getAsDouble()) + " W, "
                    + plain(settings.pullbackSecondsPerCm().orElseThrow()) + " s/cm ("
                    + plain(settings.leedJPerCm().orElseThrow()) + " J/cm)";
        }
        if (settings.cycles().isPresent()) {
            return plain(settings.cycles().getAsDouble()) + " on each stretch (cycles)";
        }
        return settings.drug()
                .map(drug -> drug + " " + plain(settings.drugPercent().orElseThrow()) + " %")
                .orElse("");
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? Long.toString(Math.round(number)) : Double.toString(number);
    }
}
