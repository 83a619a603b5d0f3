package org.tunica.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The least-squares machinery, apart from the heat model. */
class BoundedFitTest {
    /**
     * NIST StRD Misra1a, nonlinear regression, y = b1 (1 - exp(-b2 x)). Data and certified values from memory; a wrong
     * point or value could not give the certified sum of squares to eight digits.
     */
    private static final double[] MISRA_X = {
        77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0
    };

    private static final double[] MISRA_Y = {
        10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78
    };

    private static final FreeConstant B1 = new FreeConstant("b1", 250, 100, 600);
    private static final FreeConstant B2 = new FreeConstant("b2", 5e-4, 5e-5, 5e-3);

    private static double[] misra(double[] shares) {
        double b1 = B1.at(shares[0]);
        double b2 = B2.at(shares[1]);
        return IntStream.range(0, MISRA_X.length)
                .mapToDouble(i -> b1 * (1 - Math.exp(-b2 * MISRA_X[i])) - MISRA_Y[i])
                .toArray();
    }

    @ParameterizedTest
    @CsvSource({"500, 1e-4", "250, 5e-4"})
    void misra1a_fromBothPublishedStarts(double b1, double b2) {
        BoundedFit fit = new BoundedFit(BoundedFitTest::misra, MISRA_X.length, 1e-4, 1e-12);
        double[] start = {new FreeConstant("b1", b1, 100, 600).share(), new FreeConstant("b2", b2, 5e-5, 5e-3).share()};
        BoundedFit.Rest rest = fit.from(start);
        assertTrue(rest.settled());
        assertEquals(2.3894212918E+02, B1.at(rest.shares()[0]), 2e-5);
        assertEquals(5.5015643181E-04, B2.at(rest.shares()[1]), 1e-10);
        assertEquals(1.2455138894E-01, rest.sumOfSquares(), 1e-9);
    }

    @Test
    void misra1a_standardErrors() {
        BoundedFit fit = new BoundedFit(BoundedFitTest::misra, MISRA_X.length, 1e-4, 1e-12);
        BoundedFit.Rest rest = fit.from(new double[] {0.3, 0.5});
        Sureness sureness = new Sureness(fit.slopes(rest.shares()), rest.sumOfSquares() / 12, 12);
        assertEquals(2.7070075241E+00, sureness.standardError(0) * B1.perShare(rest.shares()[0]), 1e-4);
        assertEquals(7.2668688436E-06, sureness.standardError(1) * B2.perShare(rest.shares()[1]), 1e-9);
        // Two-sided 95 % point of Student's t at 12 degrees of freedom: any table, 2.179.
        assertEquals(2.179, sureness.halfWidth(0) / sureness.standardError(0), 5e-4);
        assertTrue(sureness.correlation(0, 1) < -0.99, "known to trade off");
    }

    @Property(tries = 50)
    void straightLine_closedForm(
            @ForAll @DoubleRange(min = 0.1, max = 0.9) double a, @ForAll @DoubleRange(min = 0.1, max = 0.9) double b) {
        UnaryOperator<double[]> line = shares -> IntStream.range(0, 6)
                .mapToDouble(i -> shares[0] - a + i * (shares[1] - b))
                .toArray();
        BoundedFit.Rest rest = new BoundedFit(line, 6, 0.05, 1e-10).from(new double[] {0.5, 0.5});
        assertEquals(a, rest.shares()[0], 1e-6);
        assertEquals(b, rest.shares()[1], 1e-6);
    }

    @Property(tries = 50)
    void optimumBeyondTheRange_endsAtItsEdge(@ForAll @DoubleRange(min = 1.1, max = 5) double beyond) {
        UnaryOperator<double[]> pull = shares -> new double[] {shares[0] - beyond, 0.1};
        double share =
                new BoundedFit(pull, 2, 0.05, 1e-8).from(new double[] {0.5}).shares()[0];
        assertTrue(share > 0.99 && share <= 1, "share " + share);
    }

    @Test
    void startAtAnEnd_stillMoves() {
        UnaryOperator<double[]> pull = shares -> new double[] {shares[0] - 0.4, 0};
        assertEquals(
                0.4, new BoundedFit(pull, 2, 0.05, 1e-8).from(new double[] {0}).shares()[0], 1e-6);
    }

    @Test
    void twoSharesThatActAlike_areNotFixed() {
        double[][] slopes = {{1, 2, 0}, {2, 4, 0}, {3, 6, 1}, {1, 2, 5}};
        Sureness sureness = new Sureness(slopes, 1, 1);
        assertEquals(List.of(List.of(0, 1)), sureness.unfixedTogether());
        assertTrue(Double.isInfinite(sureness.standardError(0)));
        assertTrue(Double.isNaN(sureness.correlation(0, 1)));
        assertFalse(Double.isInfinite(sureness.standardError(2)));
        assertTrue(sureness.condition() > 1e9);
    }

    @Test
    void shareThatDoesNothing_isNotFixed_andJoinsNoGroup() {
        Sureness sureness = new Sureness(new double[][] {{1, 0}, {2, 0}, {1, 0}}, 1, 1);
        assertTrue(Double.isInfinite(sureness.standardError(1)));
        assertEquals(List.of(), sureness.unfixedTogether());
        assertEquals(Math.sqrt(1 / 6.0), sureness.standardError(0), 1e-12);
    }

    @Property
    void constant_shareAndValueAreOneAnothersInverse(
            @ForAll @DoubleRange(min = 0, max = 1) double share,
            @ForAll @DoubleRange(min = 1.1, max = 100) double ratio) {
        FreeConstant constant = new FreeConstant("c", 2, 2, 2 * ratio);
        double value = Math.max(2, Math.min(2 * ratio, constant.at(share)));
        assertEquals(share, new FreeConstant("c", value, 2, 2 * ratio).share(), 1e-9);
    }
}
