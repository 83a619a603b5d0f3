package org.tunica.plan;

import java.util.ArrayList;
import java.util.List;
import org.tunica.casefile.FieldReader;
import org.tunica.knowledge.Standing;

/** Reads settings back from an advice or a plan. */
public final class SettingsReader {
    private SettingsReader() {}

    /** The settings in an object; its faults are noted where the reader notes them. */
    public static SettingsAdvice read(FieldReader reader) {
        SettingsAdvice read = new SettingsAdvice(
                reader.number("powerW"),
                reader.number("pullbackSecondsPerCm"),
                reader.number("leedJPerCm"),
                reader.number("totalEnergyJ"),
                reader.number("cycles"),
                reader.number("pulsesPerCm"),
                reader.texts("againstCustom"),
                reader.number("tumescentMl"),
                reader.number("lidocaineMgPerKg"),
                reader.text("drug"),
                reader.number("drugPercent"),
                reader.number("drugMl"),
                reader.number("sclerosantMgPerKg"),
                reader.number("foamMl"),
                reader.number("lesions"),
                ranges(reader),
                reader.text("note"));
        reader.done();
        return read;
    }

    private static List<SettingAdvice> ranges(FieldReader reader) {
        List<SettingAdvice> read = new ArrayList<>();
        reader.objects("ranges").orElse(List.of()).forEach(range -> read.add(range(range)));
        return read;
    }

    private static SettingAdvice range(FieldReader reader) {
        SettingAdvice read = new SettingAdvice(
                reader.requiredText("setting"),
                reader.requiredText("name"),
                reader.number("value"),
                reader.number("low"),
                reader.number("typical"),
                reader.number("high"),
                reader.requiredText("unit"),
                reader.requiredText("source"),
                reader.requiredWord("standing", Standing.class),
                reader.text("rule"));
        reader.done();
        return read;
    }
}
