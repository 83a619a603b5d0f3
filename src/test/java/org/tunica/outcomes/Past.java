package org.tunica.outcomes;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;
import org.tunica.pastcases.PastCase;
import org.tunica.pastcases.PastCaseReader;

/** Invented past cases of one treated segment over 36 cm, written by hand for tests. */
final class Past {
    static final Knowledge KNOWLEDGE = Knowledge.of(Bundle.shipped());
    static final OutcomeNumbers NUMBERS = OutcomeNumbers.of(KNOWLEDGE);
    static final SegmentOutcomes OUTCOMES = new SegmentOutcomes(KNOWLEDGE);

    private static final String LINE = """
            {"format":"tunica-past/1","id":"ID","invented":true,"site":"SITE",YEAR
            "caseFile":{"format":"tunica-case/1","caseRef":"ID","patient":{"canLie":{}},"room":{},
            "limbs":[{"side":"left","segments":[
            {"ref":"L1","vein":"VEIN","level":"thigh","measured":{},"nerve":{}}]}]},
            "delivered":[{"format":"tunica-delivered/1","caseRef":"ID","totals":{},"segments":[
            {"ref":"L1","technique":"TECHNIQUE","access":{},"treatedLengthCm":36.0,"closingDuplex":{}}],"aftercare":{}}],
            "followUp":{"format":"tunica-followup/1","caseRef":"ID","limbs":[{"side":"left",
            "treated":[{"ref":"L1","treatedLengthCm":36.0,"closure":"CLOSURE"}],"visits":[VISITS]}]},"notes":[]}""";

    private final String line;

    private Past(String line) {
        this.line = line;
    }

    /** Laser of a great saphenous vein at site-a in 2024, its closure by the first definition. */
    static Past number(int number) {
        return new Past(LINE.replace("ID", "p-%024x".formatted(number)));
    }

    Past with(String word, String value) {
        return new Past(line.replace(word, value));
    }

    Past technique(String id) {
        return with("TECHNIQUE", id);
    }

    /** Visits, each of a day and what was seen of the segment. */
    PastCase seen(String... visits) {
        return read(with("VISITS", String.join(",", visits)).line);
    }

    private static PastCase read(String line) {
        String whole = line.replace("SITE", "site-a")
                .replace("YEAR", "\"year\":2024,")
                .replace("VEIN", "great-saphenous")
                .replace("TECHNIQUE", "laser-1470-radial")
                .replace("CLOSURE", "adhesive-open-stump");
        return new PastCaseReader(KNOWLEDGE).read("invented", whole.getBytes(StandardCharsets.UTF_8));
    }

    static String visit(int day, String seen) {
        return "{\"daysAfter\":" + day + ",\"segments\":[{\"ref\":\"L1\"" + (seen.isEmpty() ? "" : "," + seen) + "}]}";
    }

    static String closed(int day) {
        return visit(day, "\"openLengthCm\":0");
    }

    static String open(int day) {
        return visit(day, "\"openLengthCm\":30");
    }

    static SegmentOutcome outcome(PastCase pastCase) {
        return OUTCOMES.of(pastCase, "L1").orElseThrow();
    }

    static List<SegmentOutcome> outcomes(List<PastCase> pastCases) {
        return pastCases.stream().flatMap(one -> OUTCOMES.of(one).stream()).toList();
    }
}
