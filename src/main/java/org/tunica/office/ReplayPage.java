package org.tunica.office;

import java.util.List;
import org.tunica.frame.Frame;
import org.tunica.workroom.ReplayReading;

/**
 * What a replay found.
 *
 * @param of what was replayed, in words
 * @param back where one came from
 * @param reading what it found
 * @param notes what the reader must know beside it
 */
public record ReplayPage(Frame frame, String of, String back, ReplayReading reading, List<String> notes) {}
