package org.tunica.casefile;

/** UCUM codes as people write them behind a number. */
public final class UcumWords {
    private UcumWords() {}

    /** The unit with the blank before it; nothing for a pure number. */
    public static String behind(String ucum) {
        return switch (ucum) {
            case "1" -> "";
            case "Cel" -> " degrees Celsius";
            case "/cm" -> " per cm";
            case "a" -> " years";
            case "mm[Hg]" -> " mmHg";
            default -> " " + ucum;
        };
    }
}
