package org.tunica.cli;

import java.util.List;
import org.tunica.pastcases.Release;
import org.tunica.pastcases.WaitingCase;
import org.tunica.pastcases.WaitingRoom;
import org.tunica.plan.Advice;

/** Waiting cases as text. */
final class WaitingText {
    private static final int ID_WIDTH = 28;

    private final int width;

    WaitingText(int width) {
        this.width = width;
    }

    /** A line for each, with the crowd it would stand in. */
    String all(List<Release.Place> places) {
        if (places.isEmpty()) {
            return "No case waits for its release.\n";
        }
        StringBuilder out = new StringBuilder();
        out.append(Wrap.paragraph(
                width,
                0,
                places.size() + (places.size() == 1 ? " case waits" : " cases wait")
                        + " for release. The crowds are those of the base if all that wait were released together."));
        out.append('\n');
        places.forEach(place ->
                out.append(Wrap.table(width, List.of(ID_WIDTH), List.of(List.of(place.id(), place.says())))));
        return out.append('\n')
                .append("Look at one with: tunica cases waiting ID --cases FOLDER\n")
                .toString();
    }

    /** Exactly what would be released, for a person to read. */
    String one(WaitingCase waiting, WaitingRoom.Line line, Release.Place place) {
        StringBuilder out = new StringBuilder();
        out.append(
                Wrap.paragraph(
                        width,
                        0,
                        "Read all of it. Release it only if nothing in it, alone or together, could tell you or others who this is."));
        out.append('\n').append("Crowd: ").append(place.says()).append(".\n\nNotes:\n");
        if (waiting.notes().isEmpty()) {
            out.append("  none\n");
        }
        waiting.notes().forEach(note -> out.append(Wrap.paragraph(width, 2, note)));
        out.append("\nThe line as it is kept:\n").append(line.text());
        out.append("\n\nDigest of this line, to be given back to release it:\n")
                .append(line.digest())
                .append("\n\n");
        return out.append(Wrap.paragraph(width, 0, Advice.CAUTION)).toString();
    }
}
