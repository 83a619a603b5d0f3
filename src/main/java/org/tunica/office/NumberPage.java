package org.tunica.office;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * A form for one number of a change.
 *
 * @param number of the change
 * @param id of the number
 * @param says what it is, in words
 * @param unit in words
 * @param seen the file as it was seen
 * @param path of the file
 * @param value as typed
 * @param source as typed
 * @param standing as chosen
 * @param note as typed
 * @param sources every source
 * @param standings every standing
 * @param feeds rules that name it
 * @param faults why it was not saved
 */
public record NumberPage(
        Frame frame,
        String number,
        String id,
        String says,
        String unit,
        String seen,
        String path,
        String value,
        String source,
        String standing,
        String note,
        List<RulePage.SourceLine> sources,
        List<String> standings,
        List<String> feeds,
        List<String> faults) {}
