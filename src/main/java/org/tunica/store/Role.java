package org.tunica.store;

import org.tunica.casefile.Word;

/** What a user may be; what each may do is decided where requests come in. */
public enum Role implements Word {
    SPECIALIST,
    MEETING_MEMBER,
    RULE_AUTHOR,
    CLINICAL_LEAD,
    SAFETY_OFFICER,
    ADMINISTRATOR
}
