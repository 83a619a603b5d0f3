package org.tunica.pastcases;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/**
 * One line of a file of past cases, not read yet.
 *
 * @param number of the line, from 1
 * @param bytes without what ends the line
 * @param ended whether something ends it; only the last may lack that
 */
public record CaseLine(long number, byte[] bytes, boolean ended) {
    /**
     * Reads it.
     *
     * @throws FaultyInput with every fault, the number of the line and the JSON path
     */
    public PastCase read(PastCaseReader reader) {
        return read(reader::read);
    }

    /**
     * Reads its case alone.
     *
     * @throws FaultyInput with every fault of the case, the number of the line and the JSON path
     */
    public CaseFile readCase(PastCaseReader reader) {
        return read(reader::readCase);
    }

    private <T> T read(BiFunction<String, byte[], T> reading) {
        try {
            return reading.apply("line " + number, bytes);
        } catch (FaultyInput e) {
            List<Fault> faults = new ArrayList<>();
            e.faults().forEach(fault -> faults.add(new Fault("line " + number + ", " + fault.place(), fault.says())));
            if (!ended) {
                faults.add(new Fault("line " + number, "is the last and nothing ends it: the file may be cut short"));
            }
            throw new FaultyInput("line " + number, faults);
        }
    }
}
