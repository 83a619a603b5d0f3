package org.tunica.replay;

import java.util.List;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.plan.OptionStanding;

/** Reads the result of a batch back. */
final class BatchReader {
    private BatchReader() {}

    /** @throws org.tunica.casefile.FaultyInput when it is none */
    static BatchResult read(byte[] json) {
        Faults faults = new Faults();
        FieldReader root = new FieldReader(JsonText.parseRecord("batch", json), "$", faults);
        BatchResult result = new BatchResult(
                (int) root.requiredNumber("batch"),
                root.requiredText("cases"),
                (int) root.requiredNumber("casesCount"),
                (int) root.requiredNumber("segmentsCount"),
                (int) root.requiredNumber("checkedCount"),
                list(root, "changed").stream().map(BatchReader::segment).toList(),
                list(root, "unreadable").stream()
                        .map(one -> new Unreadable(one.requiredText("caseRef"), one.texts("faults")))
                        .toList());
        root.done();
        faults.throwIfAny("batch");
        return result;
    }

    private static List<FieldReader> list(FieldReader reader, String field) {
        return reader.required(field, reader.objects(field)).orElse(List.of());
    }

    private static ReplayedSegment segment(FieldReader reader) {
        return new ReplayedSegment(
                reader.requiredText("caseRef"),
                reader.requiredWord("side", Limb.Side.class),
                reader.requiredWord("vein", Segment.Vein.class),
                reader.requiredWord("level", Segment.Level.class),
                change(reader.object("change").orElseGet(() -> reader.emptyPart("change"))));
    }

    private static ChangedSegment change(FieldReader reader) {
        return new ChangedSegment(
                reader.requiredText("ref"),
                reader.requiredWord("gravity", Gravity.class),
                reader.text("firstBefore"),
                reader.text("firstAfter"),
                list(reader, "options").stream().map(BatchReader::option).toList(),
                list(reader, "turns").stream().map(BatchReader::turn).toList());
    }

    private static ChangedOption option(FieldReader reader) {
        return new ChangedOption(
                reader.requiredText("technique"),
                reader.word("before", OptionStanding.class),
                reader.word("after", OptionStanding.class),
                list(reader, "settings").stream().map(BatchReader::setting).toList());
    }

    private static ChangedSetting setting(FieldReader reader) {
        return new ChangedSetting(reader.requiredText("setting"), reader.text("before"), reader.text("after"));
    }

    private static Turn turn(FieldReader reader) {
        return new Turn(
                reader.requiredText("rule"),
                reader.requiredText("title"),
                reader.requiredWord("act", Turn.Act.class),
                reader.texts("techniques"),
                list(reader, "limits").stream().map(BatchReader::limit).toList());
    }

    private static MovedLimit limit(FieldReader reader) {
        return new MovedLimit(
                reader.requiredText("id"),
                reader.number("beforeValue"),
                reader.number("afterValue"),
                reader.requiredText("unit"));
    }
}
