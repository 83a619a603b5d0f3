package org.tunica.cli;

import java.util.Locale;
import java.util.stream.Collectors;
import org.tunica.knowledge.Knowledge;
import org.tunica.pastcases.CaseCount;
import org.tunica.pastcases.Imported;
import org.tunica.plan.Advice;

/** What the commands about a case base say. */
final class CasesText {
    private final Knowledge knowledge;

    CasesText(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    static String imported(Imported imported, String file, String folder) {
        return count(imported.cases(), "past case") + " of " + file + " brought into " + folder + ", which held "
                + number(imported.before()) + " before.\n" + digest(imported.digest()) + caution();
    }

    static String broughtIn(long cases, String file, String place) {
        return count(cases, "past case") + " of " + file + " brought into " + DataPlace.shown(place)
                + "; those that were there with the same words were passed over.\n" + caution();
    }

    static String invented(Imported imported, String folder, long seed) {
        return "INVENTED: " + count(imported.cases(), "case") + " of seed " + seed + " that nobody ever was, put into "
                + folder + ", which held " + number(imported.before())
                + " before. Nothing may be concluded from them.\n" + digest(imported.digest()) + caution();
    }

    static String exported(long cases, String file) {
        return count(cases, "past case") + " written to " + file + "\n";
    }

    String checked(CaseCount count, String name) {
        StringBuilder text = new StringBuilder(name + ": " + count(count.cases(), "past case") + ", every line sound");
        text.append(invented(count)).append("\n");
        text.append(count(count.segments(), "treated segment")).append("\n");
        count.byTechnique()
                .forEach((technique, segments) -> text.append(String.format(
                        Locale.ROOT,
                        "  %,10d  %s\n",
                        segments,
                        knowledge.technique(technique).says())));
        if (!count.byYear().isEmpty()) {
            text.append("By year: ")
                    .append(count.byYear().entrySet().stream()
                            .map(entry -> entry.getKey() + " " + number(entry.getValue()))
                            .collect(Collectors.joining(", ")))
                    .append("\n");
        }
        return text.append(digest(count.digest())).append(caution()).toString();
    }

    private static String invented(CaseCount count) {
        if (count.invented() == 0) {
            return "";
        }
        return count.invented() == count.cases()
                ? "; all of them are INVENTED and prove nothing"
                : "; " + number(count.invented()) + " of them are INVENTED and prove nothing";
    }

    private static String digest(String digest) {
        return "Digest of the base: " + digest + "\n";
    }

    private static String caution() {
        return "\n" + Advice.CAUTION + "\n";
    }

    private static String count(long count, String what) {
        return number(count) + " " + what + (count == 1 ? "" : "s");
    }

    private static String number(long number) {
        return String.format(Locale.ROOT, "%,d", number);
    }
}
