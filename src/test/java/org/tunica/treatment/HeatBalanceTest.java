package org.tunica.treatment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.tunica.treatment.HeatBalance.Number;

class HeatBalanceTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static HeatBalance balance(
            OptionalDouble powerW,
            OptionalDouble pullbackSPerCm,
            OptionalDouble leedJPerCm,
            OptionalDouble energyJ,
            OptionalDouble timeS,
            OptionalDouble lengthCm) {
        DeliveredHeat heat = new DeliveredHeat(
                NONE, powerW, pullbackSPerCm, NONE, leedJPerCm, energyJ, timeS, OptionalInt.empty(), NONE, NONE);
        return HeatBalance.of(heat, lengthCm, 0.02);
    }

    private static OptionalDouble of(double value) {
        return OptionalDouble.of(value);
    }

    @Test
    void documentationExample_seventyJoulesAtTwelveWattsOverTwentyCentimetres() { // evidence I 17 and 18, S-0025
        HeatBalance balance = balance(of(12), NONE, of(70), NONE, NONE, of(20));
        assertEquals(5.83, balance.value(Number.PULLBACK).orElseThrow(), 0.005);
        assertEquals(1400, balance.value(Number.ENERGY).orElseThrow(), 1e-9);
        assertEquals(117, balance.value(Number.TIME).orElseThrow(), 0.5);
        assertTrue(balance.computed(Number.PULLBACK));
        assertFalse(balance.computed(Number.POWER));
    }

    @Property(seed = "20260101", tries = 300)
    void anyTwoGiveTheThird(
            @ForAll @DoubleRange(min = 1, max = 100) double powerW,
            @ForAll @DoubleRange(min = 0.5, max = 60) double pullbackSPerCm,
            @ForAll @IntRange(max = 2) int missing) {
        HeatBalance balance = balance(
                missing == 0 ? NONE : of(powerW),
                missing == 1 ? NONE : of(pullbackSPerCm),
                missing == 2 ? NONE : of(powerW * pullbackSPerCm),
                NONE,
                NONE,
                NONE);
        assertEquals(powerW, balance.value(Number.POWER).orElseThrow(), 1e-9 * powerW);
        assertEquals(pullbackSPerCm, balance.value(Number.PULLBACK).orElseThrow(), 1e-9 * pullbackSPerCm);
        assertEquals(
                powerW * pullbackSPerCm,
                balance.value(Number.LINEAR_ENERGY).orElseThrow(),
                1e-9 * powerW * pullbackSPerCm);
        assertEquals(List.of(), balance.contradictions());
    }

    @Property(seed = "20260101", tries = 300)
    void threeThatDoNotAgree_areAContradiction(
            @ForAll @DoubleRange(min = 1, max = 100) double powerW,
            @ForAll @DoubleRange(min = 0.5, max = 60) double pullbackSPerCm,
            @ForAll @DoubleRange(min = 0.5, max = 1.5) double off) {
        HeatBalance balance =
                balance(of(powerW), of(pullbackSPerCm), of(powerW * pullbackSPerCm * off), NONE, NONE, NONE);
        assertEquals(Math.abs(off - 1) > 0.02 + 1e-9, !balance.contradictions().isEmpty());
    }

    @Test
    void timeAndLength_makeThePullback_andEnergyThePower() {
        HeatBalance balance = balance(NONE, NONE, NONE, of(2660), of(266), of(38));
        assertEquals(10, balance.value(Number.POWER).orElseThrow(), 1e-9);
        assertEquals(7, balance.value(Number.PULLBACK).orElseThrow(), 1e-9);
        assertEquals(70, balance.value(Number.LINEAR_ENERGY).orElseThrow(), 1e-9);
    }

    @Test
    void oneNumberAlone_makesNoOther() {
        HeatBalance balance = balance(of(10), NONE, NONE, NONE, NONE, NONE);
        for (Number number : Number.values()) {
            assertEquals(number == Number.POWER, balance.value(number).isPresent());
        }
    }
}
