package org.tunica.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** Runs the program in this process, and keeps what it said and how it ended. */
abstract class AtTheCommandLine {
    int code;
    String out = "";
    String err = "";

    final void run(String... args) {
        StringWriter written = new StringWriter();
        StringWriter faults = new StringWriter();
        code = Main.run(args, new PrintWriter(written), new PrintWriter(faults));
        out = written.toString();
        err = faults.toString();
    }
}
