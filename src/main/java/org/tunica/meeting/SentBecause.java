package org.tunica.meeting;

import org.tunica.casefile.Word;

/** Why a person sends a case, beside what the rules find. */
enum SentBecause implements Word {
    SECOND_OPINION_WANTED,
    PAST_CASES_SPEAK_AGAINST_THE_FIRST_OPTION,
    RARE_FINDING,
    WISH_OF_THE_PATIENT_DIFFERS,
    MEASUREMENT_DOUBTED,
    COMPLICATION_BEFORE,
    FOR_TEACHING
}
