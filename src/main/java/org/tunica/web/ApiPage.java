package org.tunica.web;

import java.util.List;
import org.tunica.frame.Frame;

/** The page that tells what can be asked over HTTP. */
record ApiPage(Frame frame, List<Line> lines) {
    /** One thing that can be asked. */
    record Line(String method, String path, String says) {}
}
