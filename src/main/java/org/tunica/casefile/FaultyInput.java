package org.tunica.casefile;

import java.util.List;
import java.util.stream.Collectors;

/** An input that cannot be used, with every fault it has. */
public final class FaultyInput extends RuntimeException {
    private final String what;
    private final transient List<Fault> faults;

    /** An input {@code what} (a file name, "case", "knowledge") with at least one fault. */
    public FaultyInput(String what, List<Fault> faults) {
        super(message(what, faults));
        this.what = what;
        this.faults = List.copyOf(faults);
    }

    /** The input that is faulty. */
    public String what() {
        return what;
    }

    /** Every fault, in the order found. */
    public List<Fault> faults() {
        return faults;
    }

    private static String message(String what, List<Fault> faults) {
        String count = faults.size() == 1 ? "1 fault" : faults.size() + " faults";
        return faults.stream()
                .map(fault -> "  " + fault)
                .collect(Collectors.joining("\n", what + ": " + count + "\n", ""));
    }
}
