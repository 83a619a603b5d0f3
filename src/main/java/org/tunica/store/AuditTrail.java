package org.tunica.store;

import java.util.List;

/** The chain of all acts. Rows are added by every write, and here for acts that change nothing kept. */
public interface AuditTrail {
    /** Tells of an act that changed nothing kept, such as looking at a case. */
    Stamp note(Actor by, Act act, Subject subject);

    /** The head, to be noted elsewhere. */
    AuditHead head();

    /** A stretch of the trail, newest first. */
    List<AuditRow> newest(Page page);

    /** A stretch of what happened to one subject, newest first. */
    List<AuditRow> about(Subject subject, Page page);

    /** Checks every row of the trail, its head, and everything kept against it, as they stand at one moment. */
    Verification verify();

    /** The same, and that a head noted earlier is still part of the trail. */
    Verification verify(AuditHead noted);
}
