package org.tunica;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every number of a case, of the physics and of an advice says its unit in its name. */
class RecordsTest {
    private static final List<String> PACKAGES = List.of(
            "org.tunica.casefile",
            "org.tunica.physics",
            "org.tunica.plan",
            "org.tunica.session",
            "org.tunica.statistics",
            "org.tunica.treatment");

    private static final String UNIT =
            "(Mm2|MmHg|Mm|Cm2|Cm|M2|M3|M|Ml|Mg|Kg|Years|Minutes|Min|Seconds|S|Percent|W|J|K|C)";

    /** A unit or a quotient of units (powerW, leedJPerCm, contactWPerM2K), or a word that says there is none. */
    private static final Pattern WITH_UNIT = Pattern.compile(
            "percent|[a-z]\\w*(" + UNIT + "(Per" + UNIT + "+)?|Fraction|Share|Factor|Probability|Index)");

    /** Without a dimension, or in the unit that stands beside them in the record. */
    private static final Set<String> WITHOUT_UNIT = Set.of(
            "wallFractionKilled",
            "wallFractionKilledAtOnce",
            "cycles",
            "gasParts",
            "lesions",
            "score",
            "value",
            "low",
            "middle",
            "typical",
            "high",
            "min",
            "max",
            "base",
            "firstChoice",
            "strong",
            "moderate",
            "slight",
            "points",
            "amount",
            "severityPoints",
            "limit",
            "wouldTake",
            "at",
            "step",
            "first",
            "by",
            "recorded",
            "similarity",
            "holdsAt",
            "months",
            "alike",
            "weight",
            "deviations",
            "chiSquare",
            "expected",
            "oddsRatio",
            "worseOddsRatio",
            "betterOddsRatio",
            "worseLimit",
            "betterLimit",
            "worse",
            "better",
            "standardError");

    @Test
    void everyNumberNamesItsUnit() {
        List<String> nameless = numbers().stream()
                .filter(component -> !hasUnit(component.getName()))
                .map(component -> component.getDeclaringRecord().getSimpleName() + "." + component.getName())
                .sorted()
                .toList();
        assertEquals(List.of(), nameless);
    }

    @Test
    void listOfNumbersWithoutUnit_holdsNoneThatIsGone() {
        List<String> names = numbers().stream().map(RecordComponent::getName).toList();
        assertTrue(names.containsAll(WITHOUT_UNIT), () -> WITHOUT_UNIT + " against " + names);
    }

    @Test
    void aNameWithoutUnit_isNoticed() {
        assertTrue(hasUnit("lumenDiameterMm"));
        assertTrue(hasUnit("contactWPerM2K"));
        assertFalse(hasUnit("lumenDiameter"));
        assertFalse(hasUnit("mm"));
    }

    private static boolean hasUnit(String name) {
        return WITHOUT_UNIT.contains(name) || WITH_UNIT.matcher(name).matches();
    }

    private static List<RecordComponent> numbers() {
        List<RecordComponent> numbers = new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages(PACKAGES).stream()
                        .filter(JavaClass::isRecord)
                        .flatMap(record -> Arrays.stream(record.reflect().getRecordComponents()))
                        .filter(component ->
                                component.getType() == double.class || component.getType() == OptionalDouble.class)
                        .toList();
        assertTrue(numbers.size() > 40, "only " + numbers.size() + " numbers found");
        return numbers;
    }
}
