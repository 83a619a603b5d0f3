package org.tunica.cli;

import java.util.List;
import org.tunica.plan.Advice;

/** Waiting cases as text. */
final class WaitingText {
    private static final int ID_WIDTH = 28;

    private final int width;

    WaitingText(int width) {
        this.width = width;
    }

    /** A line for each, with the crowd it would stand in. */
    String all(List<PastCaseHouse.Waiting> waiting, String option) {
        if (waiting.isEmpty()) {
            return "No case waits for its release.\n";
        }
        StringBuilder out = new StringBuilder();
        out.append(Wrap.paragraph(
                width,
                0,
                waiting.size() + (waiting.size() == 1 ? " case waits" : " cases wait")
                        + " for release. The crowds are those of the base if all that wait were released together."));
        out.append('\n');
        waiting.forEach(one -> out.append(Wrap.table(
                width,
                List.of(ID_WIDTH),
                List.of(List.of(one.read().id(), one.place().says())))));
        return out.append('\n')
                .append("Look at one with: tunica cases waiting ID " + option + "\n")
                .toString();
    }

    /** Exactly what would be released, for a person to read. */
    String one(PastCaseHouse.Waiting waiting) {
        StringBuilder out = new StringBuilder();
        out.append(
                Wrap.paragraph(
                        width,
                        0,
                        "Read all of it. Release it only if nothing in it, alone or together, could tell you or others who this is."));
        out.append('\n').append("Crowd: ").append(waiting.place().says()).append(".\n\nNotes:\n");
        if (waiting.read().notes().isEmpty()) {
            out.append("  none\n");
        }
        waiting.read().notes().forEach(note -> out.append(Wrap.paragraph(width, 2, note)));
        out.append("\nThe line as it is kept:\n").append(waiting.text());
        out.append("\n\nDigest of this line, to be given back to release it:\n")
                .append(waiting.digest())
                .append("\n\n");
        return out.append(Wrap.paragraph(width, 0, Advice.CAUTION)).toString();
    }
}
