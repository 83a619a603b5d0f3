package org.tunica.fhir;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.Room;
import org.tunica.knowledge.CodeFile;
import org.tunica.knowledge.YamlText;
import tools.jackson.databind.JsonNode;

/** What a site says of itself: what its room holds and how its records are written. Immutable. */
public final class Site {
    /** The word a site file must carry under {@code format}. */
    public static final String FORMAT = "tunica-site/1";

    private static final Set<String> HISTORIES = Set.of("allergies", "conditions");

    private final Room room;
    private final JsonNode roomTree;
    private final Codes codes;
    private final CodeFile codeFile;
    private final Set<String> trusted;
    private final Optional<String> pages;
    private final Optional<String> smartLaunch;

    private Site(FieldReader reader, JsonNode tree, Tunica tunica, Faults faults) {
        format(reader);
        FieldReader roomReader =
                reader.required("room", reader.object("room")).orElseGet(() -> reader.emptyPart("room"));
        this.room = CaseFile.readRoom(roomReader, faults, tunica.knowledge());
        this.roomTree = tree.path("room");
        CodeFile added = reader.object("codes").map(CodeFile::read).orElseGet(CodeFile::empty);
        this.codeFile = tunica.knowledge().codes().with(added);
        this.codes = Codes.of(codeFile, tunica.knowledge(), faults);
        this.trusted = reader.ids("trustedLists", HISTORIES).orElse(Set.of());
        this.pages = address(reader, "pages");
        this.smartLaunch = address(reader, "smartLaunch");
        reader.text("says");
        reader.done();
    }

    /**
     * Reads a site file.
     *
     * @param what the name of the input, for messages
     * @param bytes YAML in UTF-8
     * @throws org.tunica.casefile.FaultyInput with every fault and its place
     */
    public static Site read(String what, byte[] bytes, Tunica tunica) {
        Faults faults = new Faults();
        JsonNode tree = YamlText.parse(what, bytes);
        Site site = new Site(new FieldReader(tree, what + ":", faults), tree, tunica, faults);
        faults.throwIfAny(what);
        return site;
    }

    /** A site that has said nothing of itself: what its room holds is not known, and its records are written as the standard has it. */
    public static Site unknown(Tunica tunica) {
        String nothing = "format: " + FORMAT + "\nroom: {}\n";
        return read("site", nothing.getBytes(StandardCharsets.UTF_8), tunica);
    }

    private static void format(FieldReader reader) {
        String format = reader.requiredText("format");
        if (!format.isEmpty() && !format.equals(FORMAT)) {
            reader.fault("format", "must be \"" + FORMAT + "\"");
        }
    }

    /** An address to send people to; anything but a plain web address could run a script in their browser. */
    private static Optional<String> address(FieldReader reader, String field) {
        Optional<String> address = reader.text(field);
        address.filter(text -> !text.matches("https?://[A-Za-z0-9.-]+(:\\d{1,5})?(/[A-Za-z0-9._~/-]*)?"))
                .ifPresent(text -> reader.fault(field, "must be a web address of letters, digits, dots and slashes"));
        return address;
    }

    /** What the room holds. */
    public Room room() {
        return room;
    }

    JsonNode roomTree() {
        return roomTree;
    }

    Codes codes() {
        return codes;
    }

    CodeFile codeFile() {
        return codeFile;
    }

    /**
     * Whether the site answers for it that a list of its records is complete, and that every code that means one of our words
     * is in the code map.
     */
    boolean trusts(String list) {
        return trusted.contains(list);
    }

    /** Where a person can read the whole advice. */
    Optional<String> pages() {
        return pages;
    }

    /** Where a SMART app for the whole advice is launched. */
    Optional<String> smartLaunch() {
        return smartLaunch;
    }
}
