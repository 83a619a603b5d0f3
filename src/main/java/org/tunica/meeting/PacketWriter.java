package org.tunica.meeting;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.paper.Block;
import org.tunica.paper.Document;
import org.tunica.pastcases.Nameless;
import org.tunica.pastcases.NamelessCase;
import org.tunica.plan.Advice;
import org.tunica.plan.SegmentAdvice;
import org.tunica.similar.CaseLibrary;
import org.tunica.similar.SimilarCases;
import org.tunica.similar.SimilarRequest;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Writes the packet of a case: the question, the case without the person, options with reasons, and past cases like it. */
final class PacketWriter {
    private static final int SIMILAR_LISTED = 5;
    private static final JsonMapper JSON = new JsonMapper();

    private final Tunica tunica;
    private final Optional<CaseLibrary> library;

    PacketWriter(Tunica tunica, Optional<CaseLibrary> library) {
        this.tunica = tunica;
        this.library = library;
    }

    /** The packet of a case under the id of its referral. */
    Packet of(CaseFile caseFile, Referral referral) {
        CaseFile named = named(caseFile, referral.meetingId());
        Advice advice = tunica.advise(named);
        NamelessCase nameless = tunica.pastCases().nameless(named, referral.meetingId());
        Optional<SimilarCases> similar = library.map(past -> tunica.likeness()
                .similar(
                        named,
                        past,
                        new SimilarRequest(
                                Optional.empty(), SimilarRequest.usual().filter(), SIMILAR_LISTED)));
        List<Document.Section> sections = new ArrayList<>();
        sections.add(question(referral, new Signs(tunica, library).of(named, advice)));
        sections.add(new Document.Section("The case, without the person", List.of(CaseDescription.patient(nameless))));
        for (Limb limb : nameless.caseFile().limbs()) {
            sections.add(new Document.Section(
                    limb.side().word().toUpperCase(Locale.ROOT) + " leg", List.of(CaseDescription.limb(limb))));
            for (Segment segment : limb.segments()) {
                sections.add(segment(limb, segment, advice, similar));
            }
        }
        sections.add(reading());
        Document document = new Document(
                "en",
                "Packet for the meeting",
                "Meeting case " + referral.meetingId(),
                advice.release().state().word().toUpperCase(Locale.ROOT),
                List.of(
                        advice.release().state().word().toUpperCase(Locale.ROOT) + " rules "
                                + advice.release().version() + ", "
                                + advice.release().digest().substring(0, 19) + ".",
                        Advice.CAUTION),
                sections);
        return new Packet(referral.meetingId(), named, advice, document);
    }

    /** The case as it is, under other names: its advice is the same, and no name of the clinic can show in it. */
    private CaseFile named(CaseFile caseFile, String id) {
        Map<String, String> names = Nameless.names(caseFile);
        ObjectNode tree = (ObjectNode) JSON.readTree(tunica.toJson(caseFile));
        tree.put("caseRef", id);
        tree.path("limbs")
                .valueStream()
                .flatMap(limb -> limb.path("segments").valueStream())
                .map(ObjectNode.class::cast)
                .forEach(segment ->
                        segment.put("ref", names.get(segment.path("ref").stringValue())));
        return tunica.readCase("case", tree.toString().getBytes(StandardCharsets.UTF_8));
    }

    private Document.Section question(Referral referral, List<String> signs) {
        List<Block> blocks = new ArrayList<>();
        String words = tunica.pastCases().scrubbed(referral.question());
        blocks.add(new Block.Paragraph(
                words.isEmpty() ? "No question in words, or none that may be shown without the person." : words));
        if (!referral.reasons().isEmpty()) {
            blocks.add(new Block.Heading("Sent because"));
            blocks.add(new Block.Points(referral.reasons()));
        }
        blocks.add(new Block.Heading("Signs of a hard case, found by the rules and in past cases"));
        blocks.add(signs.isEmpty() ? new Block.Paragraph("None is found.") : new Block.Points(signs));
        return new Document.Section("The question", blocks);
    }

    private Document.Section segment(Limb limb, Segment segment, Advice advice, Optional<SimilarCases> similar) {
        SegmentAdvice advised = advice.segments().stream()
                .filter(one -> one.ref().equals(segment.ref()))
                .findFirst()
                .orElseThrow();
        List<Block> blocks = new ArrayList<>();
        blocks.add(CaseDescription.segment(segment));
        blocks.addAll(new OptionBlocks(advised, tunica.knowledge()).all());
        blocks.addAll(new SimilarBlocks(tunica, advice.release(), similar).of(segment.ref()));
        return new Document.Section(CaseDescription.title(limb, segment), blocks);
    }

    private static Document.Section reading() {
        return new Document.Section(
                "How to read this",
                List.of(new Block.Points(List.of(
                        "Measurements of the person are rounded and age and weight are bands; the options were computed"
                                + " from the case as it is.",
                        "Words of the question that could name somebody are left out.",
                        "Of techniques of one family the first alone is told with all that speaks for it; what speaks"
                                + " against any stands with each.",
                        "Surgery, phlebectomy, liquid sclerotherapy, compression and waiting are not judged here; they"
                                + " stay open to the meeting.",
                        "* unverified: from memory or common practice, to be checked before use."))));
    }
}
