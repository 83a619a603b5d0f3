package org.tunica.knowledge;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.Segment;

/** Reads the words and figures of patient sheets. */
final class PlainReader {
    private static final double PERCENT = 100;

    private PlainReader() {}

    static PlainWay way(String id, FieldReader reader) {
        PlainWay way = new PlainWay(
                id,
                reader.requiredText("name"),
                list(reader, "techniques"),
                list(reader, "what"),
                list(reader, "before"),
                list(reader, "needles"),
                list(reader, "position"),
                list(reader, "time"),
                list(reader, "after"),
                may(reader),
                reader.requiredText("source"),
                reader.requiredWord("status", Standing.class),
                reader.requiredText("change"));
        reader.done();
        return way;
    }

    private static PlainWay.May may(FieldReader way) {
        FieldReader reader = way.required("may", way.object("may")).orElseGet(() -> way.emptyPart("may"));
        PlainWay.May may = new PlainWay.May(
                list(reader, "says"), reader.requiredText("source"), reader.requiredWord("status", Standing.class));
        reader.done();
        return may;
    }

    static PlainFigure figure(String id, FieldReader reader) {
        PlainFigure figure = new PlainFigure(
                id,
                reader.requiredWord("kind", PlainFigure.Kind.class),
                list(reader, "ways"),
                reader.texts("techniques"),
                reader.words("veins", Segment.Vein.class).orElse(Set.of()),
                reader.requiredText("says"),
                rate(reader),
                share(reader, "low"),
                share(reader, "high"),
                reader.text("horizon"),
                reader.requiredWord("among", PlainFigure.Among.class),
                reader.requiredText("definition"),
                reader.requiredText("row"),
                reader.requiredText("source"),
                reader.requiredWord("status", Standing.class),
                reader.requiredText("change"));
        ends(reader, figure);
        reader.done();
        return figure;
    }

    /** The rate as published: per cent, or events of a total. */
    private static OptionalDouble rate(FieldReader reader) {
        OptionalDouble percent = share(reader, "percent");
        OptionalDouble events = reader.number("events");
        OptionalDouble of = reader.number("of");
        if (events.isEmpty() && of.isEmpty()) {
            return percent;
        }
        if (percent.isPresent() || events.isEmpty() || of.isEmpty()) {
            reader.fault("events", "give either percent, or events and of together");
            return OptionalDouble.empty();
        }
        if (!(events.getAsDouble() >= 0 && events.getAsDouble() <= of.getAsDouble() && of.getAsDouble() > 0)) {
            reader.fault("events", "must be 0 to the number they are counted of");
        }
        return OptionalDouble.of(PERCENT * events.getAsDouble() / of.getAsDouble());
    }

    private static OptionalDouble share(FieldReader reader, String field) {
        OptionalDouble share = reader.number(field);
        if (share.isPresent() && !(share.getAsDouble() >= 0 && share.getAsDouble() <= PERCENT)) {
            reader.fault(field, "must be 0 to 100 per cent");
        }
        return share;
    }

    private static void ends(FieldReader reader, PlainFigure figure) {
        if (figure.low().isPresent() != figure.high().isPresent()) {
            reader.fault("low", "low and high stand together");
        } else if (figure.low().orElse(0) > figure.percent().orElse(figure.low().orElse(0))
                || figure.percent().orElse(figure.low().orElse(0))
                        > figure.high().orElse(PERCENT)) {
            reader.fault("low", "low, rate and high must be in rising order");
        }
        Optional.of(figure)
                .filter(one -> one.percent().isEmpty() && one.low().isEmpty() && reader.readable())
                .ifPresent(one -> reader.fault("percent", "a rate or low and high must be given"));
    }

    private static List<String> list(FieldReader reader, String field) {
        List<String> texts = reader.texts(field);
        if (reader.readable() && texts.isEmpty()) {
            reader.fault(field, "at least one must be given");
        }
        return texts;
    }
}
