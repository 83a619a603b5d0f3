package org.tunica.office;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * One release.
 *
 * @param state in words, with whether it is in force
 * @param facts what its manifest says, name and value
 * @param signed who signed
 * @param uncounted signatures that do not count, with why
 * @param missing who has to sign still
 * @param maySign who may, by what they would sign as
 * @param story what became of it, the first step first
 * @param shadow what was counted while it ran as a shadow; none when it never did
 * @param contents its files, by folder
 * @param leftOut what a release usually holds and this one does not
 * @param stale why its replay tells nothing of what is in force now; empty when it does
 * @param asks what the reader may sign here
 * @param acts what the reader may do with it
 * @param faults why a signature was not taken
 * @param typed the signature that was not taken
 */
public record ReleasePage(
        Frame frame,
        String version,
        String state,
        List<Fact> facts,
        List<String> signed,
        List<String> uncounted,
        List<String> missing,
        List<String> maySign,
        List<String> story,
        List<String> shadow,
        List<Folder> contents,
        List<String> leftOut,
        String stale,
        List<Ask> asks,
        List<Act> acts,
        List<String> faults,
        String typed) {

    /** A name and its value. */
    public record Fact(String name, String value) {}

    /** Files of a folder. */
    public record Folder(String name, List<String> files) {}

    /**
     * Something the reader may sign.
     *
     * @param as which post, in words
     * @param what in words
     * @param digest of exactly that
     * @param command that signs it
     */
    public record Ask(String as, String what, String digest, String command) {}

    /** Something the reader may do, and the page that confirms it. */
    public record Act(String says, String page) {}
}
