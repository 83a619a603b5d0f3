package org.tunica.fhir;

import java.util.List;
import org.tunica.casefile.Word;

/** The moments at which a record system asks. */
public enum Hook implements Word {
    PATIENT_VIEW(
            "Vein closure: what the scan on record allows",
            "When a chart is opened: how many incompetent leg vein segments are on record and whether techniques to close them can"
                    + " be ranked. One quiet card, none without a scan."),
    ORDER_SELECT(
            "Vein closure: how the technique just picked stands",
            "When a technique for closing a leg vein is picked: how it stands for the segment named, with reasons, cautions,"
                    + " evidence and other options."),
    ORDER_SIGN(
            "Vein closure: check before signing",
            "Before an order to close a leg vein is signed: contraindications, dose ceilings and missing measurements, with"
                    + " reasons and other options.");

    private final String title;
    private final String description;

    Hook(String title, String description) {
        this.title = title;
        this.description = description;
    }

    String title() {
        return title;
    }

    String description() {
        return description;
    }

    /** Whether it is about orders a person has drafted. */
    boolean aboutOrders() {
        return this != PATIENT_VIEW;
    }

    static List<String> words() {
        return List.of(PATIENT_VIEW.word(), ORDER_SELECT.word(), ORDER_SIGN.word());
    }
}
