package org.tunica.web;

import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.MeterRegistry;

/** How often somebody was let in, and how often not. */
final class SignInCounts {
    private final Counter succeeded;
    private final Counter refused;

    SignInCounts(MeterRegistry meters) {
        this.succeeded = counter(meters, "succeeded");
        this.refused = counter(meters, "refused");
    }

    private static Counter counter(MeterRegistry meters, String result) {
        return Counter.builder("tunica.sign.in")
                .description("Sign-ins by their result")
                .tag("result", result)
                .register(meters);
    }

    void succeeded() {
        succeeded.increment();
    }

    void refused() {
        refused.increment();
    }
}
