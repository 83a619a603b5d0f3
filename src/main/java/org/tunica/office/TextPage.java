package org.tunica.office;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * A file of a change as text.
 *
 * @param number of the change
 * @param path of the file
 * @param mine whether the reader may save it
 * @param seen the file as it was seen
 * @param text as it stands or was typed
 * @param gutter the numbers of its lines, those with a fault marked
 * @param rows how high the field is
 * @param here faults of this file, with their lines quoted
 * @param elsewhere faults of other files
 * @param faults why it was not saved
 */
public record TextPage(
        Frame frame,
        String number,
        String path,
        boolean mine,
        String seen,
        String text,
        String gutter,
        int rows,
        List<LineFault> here,
        List<ChangePage.FileFault> elsewhere,
        List<String> faults) {
    /** A fault at a line. */
    public record LineFault(int line, String says, String quoted) {}
}
