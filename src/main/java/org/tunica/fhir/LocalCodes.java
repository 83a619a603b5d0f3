package org.tunica.fhir;

import java.util.Set;
import org.tunica.Tunica;
import org.tunica.casefile.Faults;
import org.tunica.knowledge.CodeFile;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Our own codes as {@code CodeSystem} resources, for those who map theirs to them. */
public final class LocalCodes {
    private LocalCodes() {}

    /** One code system for each kind of word, in a Bundle. */
    public static ObjectNode bundle(Tunica tunica) {
        ObjectNode bundle = JsonNodeFactory.instance.objectNode();
        bundle.put("resourceType", "Bundle").put("type", "collection");
        ArrayNode entries = bundle.putArray("entry");
        Codes.of(CodeFile.empty(), tunica.knowledge(), new Faults())
                .words()
                .forEach((kind, words) -> entries.addObject()
                        .put("fullUrl", "https://records.example/fhir/CodeSystem/" + kind)
                        .set("resource", system(kind, words)));
        return bundle;
    }

    private static ObjectNode system(String kind, Set<String> words) {
        ObjectNode system = JsonNodeFactory.instance.objectNode();
        system.put("resourceType", "CodeSystem")
                .put("id", kind)
                .put("url", Codes.OWN + kind)
                .put("name", "Tunica" + kind.replace("-", ""))
                .put("title", "Words of a Tunica case for: " + kind.replace('-', ' '))
                .put("status", "draft")
                .put("experimental", true)
                .put("caseSensitive", true)
                .put("content", "complete")
                .put("count", words.size());
        ArrayNode concepts = system.putArray("concept");
        words.forEach(word -> concepts.addObject().put("code", word).put("display", word.replace('-', ' ')));
        return system;
    }
}
