package org.tunica.cli;

/** What is asked of a shadow. */
enum ShadowAsk {
    BEGIN,
    END,
    COUNTS
}
