package org.tunica.office;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * Asks before something is done with a release.
 *
 * @param act as its button says it
 * @param action where it is sent
 * @param may whether it can be done at all
 * @param back the page of the release
 * @param says what will follow, in sentences
 * @param differences what rules and numbers will say otherwise, in English; empty when nothing changes
 * @param asks what must be said
 * @param faults why it was not done
 * @param reason as typed
 * @param when the moment or the day as typed
 */
public record ConfirmPage(
        Frame frame,
        String act,
        String action,
        boolean may,
        String back,
        List<String> says,
        List<String> differences,
        ReleaseAct.Asks asks,
        List<String> faults,
        String reason,
        String when) {}
