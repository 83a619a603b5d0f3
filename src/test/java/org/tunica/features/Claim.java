package org.tunica.features;

/** What one "then" step claims; it holds for the rules shipped and can be held against others. */
@FunctionalInterface
public interface Claim {
    /**
     * Holds the claim against an engine.
     *
     * @throws AssertionError when it does not hold
     */
    void check(Scene scene, Engine engine);
}
