package org.tunica.fhir;

import java.util.function.Consumer;
import java.util.function.Predicate;
import org.tunica.CaseTree;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The record of the sound leg, changed by a test. */
final class Record {
    private final ObjectNode bundle;
    private final Site site;

    private Record(Site site) {
        this.site = site;
        CaseTree tree = CaseTree.soundLeg();
        this.bundle =
                RecordWriter.bundle(DemoSite.TUNICA, DemoSite.TUNICA.readCase("case", tree.bytes()), "2026-03-05");
    }

    static Record sound() {
        return new Record(DemoSite.with(""));
    }

    static Record at(Site site) {
        return new Record(site);
    }

    Record resource(String id, Consumer<ObjectNode> change) {
        change.accept((ObjectNode)
                find(entries(), entry -> entry.at("/resource/id").asString("").equals(id))
                        .get("resource"));
        return this;
    }

    /** Changes the component of the one segment that has a measure. */
    Record component(String measure, Consumer<ObjectNode> change) {
        return resource(
                "segment-L1",
                segment -> change.accept((ObjectNode) find(
                        (ArrayNode) segment.get("component"),
                        one -> one.at("/code/coding/0/code").asString("").equals(measure))));
    }

    Record add(String resource) {
        entries().addObject().set("resource", DemoSite.JSON.readTree(resource));
        return this;
    }

    Record without(String id) {
        for (int i = 0; i < entries().size(); i++) {
            if (entries().get(i).at("/resource/id").asString("").equals(id)) {
                entries().remove(i);
            }
        }
        return this;
    }

    private ArrayNode entries() {
        return (ArrayNode) bundle.get("entry");
    }

    private static JsonNode find(ArrayNode list, Predicate<JsonNode> wanted) {
        return list.valueStream().filter(wanted).findFirst().orElseThrow();
    }

    JsonNode tree() {
        return bundle;
    }

    Translated read() {
        return new FhirTranslator(DemoSite.TUNICA, site).translate("record", bundle, DemoSite.DAY, "case-1");
    }
}
