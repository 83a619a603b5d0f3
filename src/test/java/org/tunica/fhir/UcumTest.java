package org.tunica.fhir;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.fhir.ucum.Decimal;
import org.fhir.ucum.UcumEssenceService;
import org.fhir.ucum.UcumException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Units against the definitions of the UCUM standard and against another converter that reads its published table. */
class UcumTest {
    /** Definitions of the standard: inch 2.54 cm, foot 12 inches, pound 0.45359237 kg, metre of mercury 133.322 kPa, year 365.25 d. */
    @ParameterizedTest
    @CsvSource({
        "0.62, cm, mm, 6.2",
        "410, um, mm, 0.41",
        "1, [in_i], mm, 25.4",
        "0.4, [in_i], mm, 10.16",
        "1, [ft_i], cm, 30.48",
        "2100, ms, s, 2.1",
        "1, min, s, 60",
        "74000, g, kg, 74",
        "163, [lb_av], kg, 73.93555631",
        "1, [oz_av], kg, 0.028349523125",
        "16, kPa, mm[Hg], 120.0102008670737",
        "104, %, 1, 1.04",
        "61, a, a, 61",
        "732, mo, a, 61",
        "0, cm, cm, 0"
    })
    void value_isThatOfTheStandard(String value, String from, String to, double expected) {
        assertEquals(OptionalDouble.of(expected), Ucum.convert(new BigDecimal(value), from, to));
    }

    @Test
    void everyUnitOfTheList_agreesWithTheOtherConverter() throws UcumException {
        UcumEssenceService other =
                new UcumEssenceService(UcumEssenceService.class.getResourceAsStream("/ucum-essence.xml"));
        List<String> targets = List.of("mm", "s", "kg", "mm[Hg]", "1", "a");
        int compared = 0;
        for (String from : new TreeSet<>(Ucum.codes())) {
            assertEquals(null, other.validate(from), from);
            for (String to : targets) {
                boolean same = other.getCanonicalUnits(from).equals(other.getCanonicalUnits(to));
                OptionalDouble ours = Ucum.convert(new BigDecimal("7.25"), from, to);
                assertEquals(same, ours.isPresent(), from + " to " + to);
                assertEquals(same, Ucum.refusal(from, to).isEmpty(), from + " to " + to);
                if (same) {
                    // it keeps about three digits of a factor; the exact ones stand in the table above
                    double theirs = Double.parseDouble(other.convert(new Decimal("7.25000000000000000000"), from, to)
                            .asDecimal());
                    assertEquals(theirs, ours.getAsDouble(), Math.abs(theirs) * 1e-3, from + " to " + to);
                    compared++;
                }
            }
        }
        assertTrue(compared > 40, "only " + compared);
    }

    @ParameterizedTest
    @ValueSource(strings = {"MM", "millimetre", "Mm", "inch", "[fur_us]", "", "mm[H2O]", "cm/s", "mm ", "CEL"})
    void aUnitOutsideTheList_isRefusedByName(String unit) {
        assertEquals(OptionalDouble.empty(), Ucum.convert(BigDecimal.ONE, unit, "mm"));
        assertTrue(Ucum.refusal(unit, "mm").orElse("").contains("the unit " + unit + " is not"));
    }
}
