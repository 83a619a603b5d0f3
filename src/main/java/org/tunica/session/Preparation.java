package org.tunica.session;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.plan.OptionAdvice;

/** What a room must have ready for a session, in general words. */
final class Preparation {
    private final Knowledge knowledge;

    Preparation(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    List<String> of(List<Candidate> chosen) {
        Set<String> ready = new LinkedHashSet<>();
        ready.add("duplex scanner, marker, dressings, compression");
        SessionWriter.generators(chosen).forEach(name -> ready.add("generator: " + name));
        for (Candidate one : chosen) {
            ready.add(knowledge.technique(one.option().technique()).says() + ", "
                    + one.segment().ref());
        }
        adhesive(chosen, ready);
        fluid(chosen, ready);
        positions(chosen, ready);
        return List.copyOf(ready);
    }

    private void adhesive(List<Candidate> chosen, Set<String> ready) {
        for (Candidate one : chosen) {
            if (one.option().family() == Family.ADHESIVE
                    && one.segment().lengthCm().isPresent()) {
                double lengthCm = one.segment().lengthCm().getAsDouble();
                Adhesive adhesive = Adhesive.of(knowledge.technique(one.option().technique()), knowledge);
                ready.add("adhesive for " + one.segment().ref() + ": "
                        + adhesive.places(lengthCm).size() + " aliquots, "
                        + SessionWriter.rounded(adhesive.volumeMl(lengthCm)) + " mL in all");
            }
        }
    }

    private static void fluid(List<Candidate> chosen, Set<String> ready) {
        double tumescentMl = chosen.stream()
                .mapToDouble(one -> one.option().settings().tumescentMl().orElse(0))
                .sum();
        if (tumescentMl > 0) {
            ready.add("tumescent mix " + Math.round(tumescentMl) + " mL, with pump or syringes");
        }
        for (Candidate one : chosen) {
            OptionAdvice option = one.option();
            option.settings()
                    .drug()
                    .ifPresent(drug -> ready.add(drug.replace('-', ' ') + " "
                            + plain(option.settings().drugPercent().orElseThrow()) + " %, for "
                            + one.segment().ref()));
        }
    }

    private static void positions(List<Candidate> chosen, Set<String> ready) {
        List<String> positions = new ArrayList<>();
        for (Position position : Position.values()) {
            if (chosen.stream().anyMatch(one -> one.demand().position() == position)) {
                positions.add(position.word().replace('-', ' '));
            }
        }
        ready.add("position: " + String.join(", then ", positions));
        if (positions.contains("supine head down")) {
            ready.add("table that tilts head-down");
        }
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
