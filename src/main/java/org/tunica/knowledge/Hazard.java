package org.tunica.knowledge;

import java.util.Optional;

/**
 * What could go wrong for a patient in a way the program could add to. The rules that control it name it; where the
 * program itself holds it, {@code held} says how.
 *
 * @param id for example {@code HZ-07}
 * @param hazard what goes wrong
 * @param cause how it comes about
 * @param effect what the patient suffers
 * @param held how the program holds it apart from rules
 * @param limits what the control cannot do
 */
public record Hazard(String id, String hazard, String cause, String effect, Optional<String> held, String limits) {}
