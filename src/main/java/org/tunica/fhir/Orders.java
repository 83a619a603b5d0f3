package org.tunica.fhir;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tunica.plan.SegmentAdvice;
import tools.jackson.databind.JsonNode;

/** The drafted orders of a call that are about closing a leg vein. */
record Orders(List<Order> all) {
    /**
     * One of them.
     *
     * @param draft as it was sent
     * @param technique that is ordered; empty where the order leaves it open
     * @param places words for vein, level and side that the order names
     */
    record Order(JsonNode draft, Optional<String> technique, Set<String> places) {
        /** Whether the order may mean a segment: nothing it names speaks against it. */
        boolean means(SegmentAdvice segment) {
            return Set.of(
                            segment.vein().word(),
                            segment.level().word(),
                            segment.side().word())
                    .containsAll(places);
        }

        String id() {
            return new Part(draft, "").text("id");
        }
    }

    boolean none() {
        return all.isEmpty();
    }

    static Orders of(HookRequest request, Codes codes) {
        List<Order> orders = new ArrayList<>();
        for (JsonNode draft : request.drafts()) {
            Part part = new Part(draft, "draft");
            String reference = part.text("resourceType") + "/" + part.text("id");
            boolean picked =
                    request.selections().isEmpty() || request.selections().contains(reference);
            if (picked && part.text("resourceType").equals("ServiceRequest")) {
                order(part, codes).ifPresent(orders::add);
            }
        }
        return new Orders(List.copyOf(orders));
    }

    private static Optional<Order> order(Part draft, Codes codes) {
        List<Codes.Coding> codings = draft.codings("code");
        Optional<String> technique = codings.stream()
                .flatMap(code -> codes.word(Codes.TECHNIQUE, code).stream())
                .findFirst();
        boolean open = codings.stream()
                .flatMap(code -> codes.word(Codes.ORDER, code).stream())
                .anyMatch("close-vein"::equals);
        if (technique.isEmpty() && !open) {
            return Optional.empty();
        }
        Set<String> places = new HashSet<>();
        for (Part site : draft.list("bodySite")) {
            List<Codes.Coding> named = site.codings();
            for (String kind : List.of(Codes.VEIN, Codes.LEVEL, Codes.SIDE)) {
                named.forEach(code -> codes.word(kind, code).ifPresent(places::add));
            }
        }
        return Optional.of(new Order(draft.node(), technique, places));
    }
}
