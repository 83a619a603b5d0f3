package org.tunica.pastcases;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.tunica.casefile.CaseFile;
import org.tunica.treatment.FollowUp;

/** A case without the person, whether it waits or was released: what an outsider could know of it is the same. */
interface Anonymous {
    boolean invented();

    String site();

    OptionalInt year();

    Optional<Band> ageBandYears();

    Optional<Band> weightBandKg();

    CaseFile caseFile();

    FollowUp followUp();

    List<String> notes();
}
