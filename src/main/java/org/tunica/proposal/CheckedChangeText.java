package org.tunica.proposal;

import java.util.List;
import org.tunica.review.Difference;
import org.tunica.signing.JsonPage;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes a checked change as JSON in fixed order. */
final class CheckedChangeText {
    private CheckedChangeText() {}

    static String of(CheckedChange change) {
        ObjectNode tree = JsonNodeFactory.instance
                .objectNode()
                .put("format", CheckedChange.FORMAT)
                .put("number", change.opening().number())
                .put("author", change.opening().author())
                .put("checkedOn", change.day().toString())
                .put("result", change.result().word());
        tree.putObject("before")
                .put("release", change.opening().release())
                .put("digest", change.opening().digest())
                .put("on", change.opening().on().toString());
        change.covers()
                .ifPresent(covers ->
                        tree.putObject("covers").put("rules", covers.rules()).put("scenarios", covers.scenarios()));
        change.record().ifPresent(record -> record(tree.putObject("record"), record));
        ArrayNode checks = tree.putArray("checks");
        change.checks().forEach(check -> check(checks.addObject(), check));
        ArrayNode differences = tree.putArray("differences");
        change.differences().forEach(difference -> difference(differences.addObject(), difference));
        tree.put("lines", change.lines());
        return JsonPage.of(tree);
    }

    private static void record(ObjectNode node, CheckedChange.Told record) {
        node.put("title", record.title()).put("reason", record.reason());
        texts(node, "sources", record.lists().sources());
        texts(node, "rules", record.lists().rules());
        texts(node, "limits", record.lists().limits());
        texts(node, "retires", record.lists().retires());
    }

    private static void check(ObjectNode node, Check check) {
        node.put("check", check.question().word())
                .put("says", check.question().says())
                .put("result", check.result().word());
        texts(node, "findings", check.findings());
    }

    private static void difference(ObjectNode node, Difference difference) {
        node.put("part", difference.part().word())
                .put("act", difference.act().word())
                .put("id", difference.id())
                .put("title", difference.title());
        ArrayNode details = node.putArray("details");
        difference
                .details()
                .forEach(detail -> details.addObject()
                        .put("aspect", detail.aspect())
                        .put("before", detail.before())
                        .put("after", detail.after()));
    }

    private static void texts(ObjectNode node, String field, List<String> texts) {
        ArrayNode list = node.putArray(field);
        texts.forEach(list::add);
    }
}
