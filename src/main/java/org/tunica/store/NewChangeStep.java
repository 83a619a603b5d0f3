package org.tunica.store;

/**
 * Something that is done with a proposed change.
 *
 * @param number of its change record, four digits
 * @param act that it was handed in, or taken back
 * @param author user name
 * @param digest of the document with its checks; empty when it is taken back
 * @param rules digest over rules and knowledge; empty when it is taken back
 * @param body the document; empty when it is taken back
 * @param files the working copy in one text; empty when it is taken back
 * @param reason in words of the person; may be empty
 */
public record NewChangeStep(
        String number, Act act, String author, String digest, String rules, String body, String files, String reason) {}
