package org.tunica.web;

import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import org.tunica.store.Judgement;

/** What a person says to an act: why, and perhaps what was found. */
record Said(String because, Optional<Judgement.Finding> found) {
    /** @throws FaultyInput with every fault and its place */
    static Said read(byte[] json) {
        Faults faults = new Faults();
        FieldReader reader = reader(json, faults);
        return finished(new Said(reader.requiredText("because"), Optional.empty()), reader, faults);
    }

    /** The same with a finding, which must be there. */
    static Said readFinding(byte[] json) {
        Faults faults = new Faults();
        FieldReader reader = reader(json, faults);
        Optional<Judgement.Finding> found = Optional.of(reader.requiredWord("found", Judgement.Finding.class));
        return finished(new Said(reader.requiredText("because"), found), reader, faults);
    }

    private static FieldReader reader(byte[] json, Faults faults) {
        return new FieldReader(JsonText.parse("body", json), "$", faults);
    }

    private static Said finished(Said said, FieldReader reader, Faults faults) {
        reader.done();
        faults.throwIfAny("request");
        return said;
    }

    static FaultyInput fault(String place, String says) {
        return new FaultyInput("request", List.of(new Fault(place, says)));
    }
}
