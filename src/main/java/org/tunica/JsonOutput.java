package org.tunica;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.tunica.casefile.Word;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.ValueSerializer;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;

/** Writes records as JSON: components in order, words as spelled in files, what is unknown left out. */
final class JsonOutput {
    private static final ObjectWriter WRITER = writer();

    private JsonOutput() {}

    /** Pretty JSON with a final line break; the same record gives the same bytes everywhere. */
    static String of(Object value) {
        return WRITER.writeValueAsString(value) + "\n";
    }

    private static ObjectWriter writer() {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentArraysWith(indenter);
        printer.indentObjectsWith(indenter);
        return JsonMapper.builder()
                .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
                .changeDefaultPropertyInclusion(
                        inclusion -> inclusion.withValueInclusion(JsonInclude.Include.NON_ABSENT))
                .addModule(new SimpleModule().addSerializer(Word.class, new WordSerializer()))
                .build()
                .writer()
                .with(printer);
    }

    private static final class WordSerializer extends ValueSerializer<Word> {
        @Override
        public void serialize(Word word, JsonGenerator out, SerializationContext context) {
            out.writeString(word.word());
        }
    }
}
