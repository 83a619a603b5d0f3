package org.tunica.rules;

import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tunica.casefile.Faults;
import org.tunica.knowledge.Standing;

/** Reads the line of a rule that says who stands behind it. */
final class RuleHeader {
    private static final Pattern FORM = Pattern.compile("source (S-\\d{4}(?: S-\\d{4})*), ([a-z]+)  +change (\\d{4})"
            + "  +review by (\\d{4}-\\d{2})  +class ([a-z-]+)(?:  +hazard (HZ-\\d{2}(?: HZ-\\d{2})*))?");

    private static final int FIRST_YEAR = 2020;
    private static final int LAST_YEAR = 2099;

    /** The header of a line, or null when it is faulty (noted). */
    @Nullable
    Read read(RuleBlock.Line line, Faults faults) {
        if (line.text().isEmpty()) {
            return null;
        }
        Matcher matcher = FORM.matcher(line.text());
        if (!matcher.matches()) {
            faults.add(
                    line.place(),
                    "expected \"source <S-0001 ...>, <standing>  change <0001>  review by <2027-11>"
                            + "  class <class>\", then perhaps \"hazard <HZ-01 ...>\", with two blanks between the parts");
            return null;
        }
        Optional<Standing> standing = standing(matcher.group(2), line, faults);
        Optional<YearMonth> reviewBy = month(matcher.group(4), line, faults);
        if (standing.isEmpty() || reviewBy.isEmpty()) {
            return null;
        }
        List<String> sources = once(matcher.group(1), line, faults);
        List<String> hazards = matcher.group(6) == null ? List.of() : once(matcher.group(6), line, faults);
        return new Read(sources, standing.get(), matcher.group(3), reviewBy.get(), matcher.group(5), hazards);
    }

    private static List<String> once(String ids, RuleBlock.Line line, Faults faults) {
        List<String> list = List.of(ids.split(" "));
        list.stream()
                .filter(id -> list.indexOf(id) != list.lastIndexOf(id))
                .distinct()
                .forEach(id -> faults.add(line.place(), id + " stands twice"));
        return list;
    }

    private static Optional<Standing> standing(String word, RuleBlock.Line line, Faults faults) {
        Optional<Standing> standing = Arrays.stream(Standing.values())
                .filter(known -> known.word().equals(word))
                .findFirst();
        if (standing.isEmpty()) {
            faults.add(
                    line.place(),
                    "\"" + word + "\" is not a standing; known: published, guideline, consensus, local, unverified");
        }
        return standing;
    }

    private static Optional<YearMonth> month(String text, RuleBlock.Line line, Faults faults) {
        try {
            YearMonth month = YearMonth.parse(text);
            if (month.getYear() >= FIRST_YEAR && month.getYear() <= LAST_YEAR) {
                return Optional.of(month);
            }
        } catch (DateTimeParseException e) {
            // told below, like a month nobody will live to see
        }
        faults.add(
                line.place(),
                "\"" + text + "\" is not a month such as 2027-11 between " + FIRST_YEAR + " and " + LAST_YEAR);
        return Optional.empty();
    }

    /** What the header says. */
    record Read(
            List<String> sources,
            Standing standing,
            String change,
            YearMonth reviewBy,
            String ruleClass,
            List<String> hazards) {}
}
