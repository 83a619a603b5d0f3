package org.tunica.governance;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import org.tunica.signing.JsonPage;
import org.tunica.signing.Signature;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The signatures given for a release, in the order in which they were given; {@code tunica-signatures/1} as a file. */
public record Signatures(List<Signature> list) {
    /** The word a file of signatures carries under {@code format}. */
    public static final String FORMAT = "tunica-signatures/1";

    public Signatures {
        list = List.copyOf(list);
    }

    /** The same and one more. */
    public Signatures with(Signature signature) {
        return new Signatures(Stream.concat(list.stream(), Stream.of(signature)).toList());
    }

    /** The file; {@link #read} reads it back. */
    public String toJson() {
        ObjectNode tree = JsonNodeFactory.instance.objectNode().put("format", FORMAT);
        ArrayNode all = tree.putArray("signatures");
        list.forEach(signature -> all.add(signature.tree()));
        return JsonPage.of(tree);
    }

    /**
     * Reads a file of signatures; whether they hold is another question.
     *
     * @param what the name of the input, for messages
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path
     */
    public static Signatures read(String what, String json) {
        Faults faults = new Faults();
        FieldReader reader = new FieldReader(JsonText.parse(what, json.getBytes(StandardCharsets.UTF_8)), "$", faults);
        if (!reader.requiredText("format").equals(FORMAT)) {
            reader.fault("format", "must be " + FORMAT);
        }
        List<Signature> list = reader.required("signatures", reader.objects("signatures")).orElse(List.of()).stream()
                .map(Signature::read)
                .flatMap(Optional::stream)
                .toList();
        reader.done();
        faults.throwIfAny(what);
        return new Signatures(list);
    }
}
