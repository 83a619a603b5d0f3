package org.tunica;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.function.Function;
import org.tunica.casefile.Ceap;
import org.tunica.casefile.Word;
import org.tunica.pastcases.Band;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.StdSerializer;

/** Writes records as JSON: components in order, words as spelled in files, what is unknown left out. */
final class JsonOutput {
    private static final ObjectWriter LINE = compact();
    private static final ObjectWriter WRITER = LINE.with(printer());

    private JsonOutput() {}

    /** Pretty JSON with a final line break; the same record gives the same bytes everywhere. */
    static String of(Object value) {
        return WRITER.writeValueAsString(value) + "\n";
    }

    /** The same on one line, without a line break. */
    static String line(Object value) {
        return LINE.writeValueAsString(value);
    }

    private static DefaultPrettyPrinter printer() {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentArraysWith(indenter);
        printer.indentObjectsWith(indenter);
        return printer;
    }

    private static ObjectWriter compact() {
        return JsonMapper.builder()
                .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
                .changeDefaultPropertyInclusion(
                        inclusion -> inclusion.withValueInclusion(JsonInclude.Include.NON_ABSENT))
                .addModule(new SimpleModule()
                        .addSerializer(Word.class, new AsText<>(Word.class, Word::word))
                        .addSerializer(Ceap.class, new AsText<>(Ceap.class, Ceap::toString))
                        .addSerializer(Band.class, new AsText<>(Band.class, Band::toString)))
                .build()
                .writer();
    }

    /** Writes a value as the one text that stands for it in files. */
    private static final class AsText<T> extends StdSerializer<T> {
        private final transient Function<T, String> text;

        AsText(Class<T> type, Function<T, String> text) {
            super(type);
            this.text = text;
        }

        @Override
        public void serialize(T value, JsonGenerator out, SerializationContext context) {
            out.writeString(text.apply(value));
        }
    }
}
