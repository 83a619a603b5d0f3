package org.tunica.rules;

/** A sentence that fits no form; the parser adds file and line. */
final class SentenceFault extends Exception {
    SentenceFault(String says) {
        super(says);
    }
}
