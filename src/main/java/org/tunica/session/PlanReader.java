package org.tunica.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import org.tunica.casefile.KnownWords;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.plan.Advice;
import org.tunica.plan.OptionStanding;
import org.tunica.plan.SettingsReader;

/** Reads a plan back field by field and lists every fault it meets. */
final class PlanReader {
    private final KnownWords known;
    private final Faults faults = new Faults();

    PlanReader(KnownWords known) {
        this.known = known;
    }

    SessionPlan read(String what, byte[] bytes) {
        FieldReader root = new FieldReader(JsonText.parse(what, bytes), "$", faults);
        faults.throwIfAny(what);
        format(root);
        faults.throwIfAny(what);
        SessionPlan read = plan(root);
        root.done();
        faults.throwIfAny(what);
        return read;
    }

    private static void format(FieldReader root) {
        String format = root.requiredText("format");
        if (!format.isEmpty() && !format.equals(SessionPlan.FORMAT)) {
            root.fault("format", "must be \"" + SessionPlan.FORMAT + "\", the output of the plan command as JSON");
        }
    }

    private SessionPlan plan(FieldReader root) {
        Optional<FieldReader> caseFile = root.required("caseFile", root.object("caseFile"));
        String caseRef = root.requiredText("caseRef");
        SessionPlan read = new SessionPlan(
                SessionPlan.FORMAT,
                caseRef,
                release(part(root, "release")),
                root.requiredText("caution"),
                CaseFile.read(caseFile.orElseGet(() -> FieldReader.ofUnreadable("$.caseFile", faults)), faults, known),
                list(root, "sessions", this::session),
                list(root, "left", PlanReader::left),
                flag(root, "proved"),
                root.requiredNumber("points"),
                list(root, "fewerSessions", PlanReader::fewer),
                list(root, "boundBy", PlanReader::bound));
        if (caseFile.isPresent() && !read.caseFile().caseRef().equals(caseRef)) {
            root.fault("caseRef", "is another case than that of caseFile");
        }
        return read;
    }

    private static Advice.Release release(FieldReader reader) {
        Advice.Release read = new Advice.Release(
                reader.requiredText("version"),
                reader.requiredWord("state", Advice.Release.State.class),
                reader.requiredText("digest"));
        reader.done();
        return read;
    }

    private SessionPlan.Session session(FieldReader reader) {
        SessionPlan.Session read = new SessionPlan.Session(
                whole(reader, "number"),
                list(reader, "steps", this::step),
                list(reader, "totals", PlanReader::total),
                reader.texts("prepare"),
                list(reader, "overhead", PlanReader::time),
                reader.number("allMinutes"));
        reader.done();
        return read;
    }

    private SessionPlan.Step step(FieldReader reader) {
        SessionPlan.Step read = new SessionPlan.Step(
                whole(reader, "order"),
                reader.requiredText("ref"),
                reader.requiredWord("side", Limb.Side.class),
                reader.requiredWord("vein", Segment.Vein.class),
                reader.requiredWord("level", Segment.Level.class),
                reader.required("technique", reader.id("technique", known.techniqueIds()))
                        .orElse(""),
                reader.requiredText("says"),
                reader.requiredWord("standing", OptionStanding.class),
                whole(reader, "rank"),
                reader.text("instead"),
                reader.requiredWord("position", Position.class),
                SettingsReader.read(part(reader, "settings")),
                list(reader, "time", PlanReader::time),
                reader.texts("because"));
        reader.done();
        return read;
    }

    private static SessionPlan.Total total(FieldReader reader) {
        SessionPlan.Total read = new SessionPlan.Total(
                reader.requiredWord("shared", Shared.class),
                reader.requiredText("says"),
                reader.requiredNumber("amount"),
                reader.requiredText("unit"),
                reader.number("limit"),
                reader.text("limitId"),
                reader.text("warning"));
        reader.done();
        return read;
    }

    private static TimePart time(FieldReader reader) {
        TimePart read = new TimePart(reader.requiredText("says"), reader.requiredNumber("workMinutes"));
        reader.done();
        return read;
    }

    private static SessionPlan.Left left(FieldReader reader) {
        SessionPlan.Left read = new SessionPlan.Left(
                reader.requiredText("ref"),
                reader.requiredWord("side", Limb.Side.class),
                reader.requiredWord("leaving", SessionPlan.Leaving.class),
                reader.requiredText("why"));
        reader.done();
        return read;
    }

    private static SessionPlan.Fewer fewer(FieldReader reader) {
        SessionPlan.Fewer read = new SessionPlan.Fewer(
                whole(reader, "sessions"), reader.requiredNumber("points"), reader.texts("changes"));
        reader.done();
        return read;
    }

    private static SessionPlan.Bound bound(FieldReader reader) {
        SessionPlan.Bound read = new SessionPlan.Bound(
                reader.requiredWord("shared", Shared.class),
                reader.requiredText("says"),
                reader.requiredNumber("limit"),
                reader.requiredNumber("wouldTake"),
                reader.requiredText("unit"),
                reader.texts("changes"));
        reader.done();
        return read;
    }

    private static FieldReader part(FieldReader reader, String field) {
        return reader.required(field, reader.object(field)).orElseGet(() -> reader.emptyPart(field));
    }

    private static <T> List<T> list(FieldReader reader, String field, Function<FieldReader, T> one) {
        List<T> read = new ArrayList<>();
        reader.required(field, reader.objects(field)).orElse(List.of()).forEach(part -> read.add(one.apply(part)));
        return read;
    }

    private static boolean flag(FieldReader reader, String field) {
        return reader.required(field, reader.flag(field)).orElse(false);
    }

    private static int whole(FieldReader reader, String field) {
        double number = reader.requiredNumber(field);
        if (!Double.isNaN(number) && number != Math.rint(number)) {
            reader.fault(field, "must be a whole number");
        }
        return (int) number;
    }
}
