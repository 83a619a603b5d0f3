package org.tunica.cli;

import picocli.CommandLine.Option;

/** Why somebody does what others will ask about. */
final class Because {
    @Option(names = "--because", required = true, paramLabel = "WORDS", description = "Why, in a sentence.")
    private String text = "";

    String text() {
        return text;
    }
}
