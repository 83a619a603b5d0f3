package org.tunica.web;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * The page to sign in.
 *
 * @param faults why the last try failed; not more than anybody may know
 * @param passwords whether users of this server sign in here
 * @param hospital whether the hospital's accounts do
 */
record SignInPage(Frame frame, List<String> faults, boolean passwords, boolean hospital) {}
