package org.tunica.watching;

import java.util.List;
import org.tunica.signing.JsonPage;
import org.tunica.statistics.SharesApart.Counted;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes a report of a look as JSON in fixed order. */
final class WatchReportText {
    private WatchReportText() {}

    static String of(WatchReport report) {
        ObjectNode tree = JsonNodeFactory.instance
                .objectNode()
                .put("format", WatchReport.FORMAT)
                .put("release", report.release())
                .put("day", report.day().toString());
        tree.putObject("stretches")
                .put("from", report.stretches().from().toString())
                .put("turn", report.stretches().turn().toString())
                .put("to", report.stretches().to().toString());
        tree.put("casesNow", report.casesNow()).put("casesBefore", report.casesBefore());
        texts(tree, "releases", report.releases());
        ArrayNode rates = tree.putArray("rates");
        report.rates().forEach(rate -> rate(rates.addObject(), rate));
        answers(tree.putArray("overriddenByRule"), report.ofRules());
        answers(tree.putArray("overriddenByTechnique"), report.ofTechniques());
        tree.put("unknownCards", report.unknownCards());
        texts(tree, "oftenSetAside", report.oftenSetAside());
        ArrayNode reviews = tree.putArray("reviews");
        report.reviews()
                .forEach(review -> reviews.addObject()
                        .put("id", review.id())
                        .put("title", review.title())
                        .put("lastDay", review.lastDay().toString())
                        .put("due", review.due().word()));
        ArrayNode numbers = tree.putArray("unverified");
        report.unverified().forEach(number -> number(numbers.addObject(), number));
        return JsonPage.of(tree);
    }

    private static void rate(ObjectNode node, RuleRate rate) {
        node.put("rule", rate.rule()).put("title", rate.title());
        counted(node.putObject("now"), rate.lately());
        rate.before().ifPresent(before -> counted(node.putObject("before"), before));
        rate.chanceProbability().ifPresent(chance -> node.put("chanceProbability", chance));
        node.put("drift", rate.drift().word());
    }

    private static void counted(ObjectNode node, Counted counted) {
        node.put("cases", counted.total()).put("spoke", counted.events());
    }

    private static void answers(ArrayNode list, List<AnswerRate> rates) {
        for (AnswerRate rate : rates) {
            ObjectNode node = list.addObject()
                    .put("id", rate.id())
                    .put("says", rate.says())
                    .put("answered", rate.overridden().total())
                    .put("overridden", rate.overridden().events())
                    .put("lowShare", rate.overridden().lowShare())
                    .put("highShare", rate.overridden().highShare())
                    .put("looked", rate.looked())
                    .put("appropriate", rate.appropriate());
            ArrayNode reasons = node.putArray("reasons");
            rate.reasons()
                    .forEach(reason ->
                            reasons.addObject().put("reason", reason.reason()).put("count", reason.count()));
        }
    }

    private static void number(ObjectNode node, UnverifiedNumber number) {
        node.put("id", number.id())
                .put("says", number.says())
                .put("value", number.value())
                .put("source", number.source());
        texts(node, "rules", number.rules());
    }

    private static void texts(ObjectNode node, String field, List<String> texts) {
        ArrayNode list = node.putArray(field);
        texts.forEach(list::add);
    }
}
