package org.tunica;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Damages texts the way people, programs and attackers do; the same seed does the same damage. */
public final class Mangled {
    private static final Pattern TOKEN = Pattern.compile("\\S+");

    /** Pieces that have a meaning for one reader or another. */
    private static final List<String> PIECES = List.of(
            "\n",
            "\r\n",
            "\t",
            "\0",
            " ",
            "  ",
            "    ",
            "# ",
            "rule EXC-901  x\n",
            "  when ",
            "  and  ",
            "  then ",
            "  because ",
            "limit ",
            " or ",
            " and ",
            "exclude",
            "prefer strongly",
            "the finding near-nerve holds",
            "is not recorded",
            "in another segment of this leg ",
            "there is no caution",
            "hazard HZ-01",
            "1e999",
            "-0",
            "NaN",
            ".inf",
            "0x1F",
            "&a ",
            "*a",
            "!!java.net.URL ",
            "<<: ",
            "---\n",
            "...\n",
            "%YAML 1.2\n",
            "? ",
            ": ",
            "- ",
            "[",
            "]",
            "{",
            "}",
            "|\n",
            ">\n",
            "'",
            "\"",
            "\\u0000",
            "\u202e",
            "\u200b",
            "\u0430",
            "\ufeff",
            "\ud83d",
            "\u2028",
            "@",
            "`",
            "${x}",
            "System.exit(9)",
            "<script>",
            "../",
            "null",
            "~",
            "true",
            "[]",
            "{}");

    private Mangled() {}

    /** A text with one to four damages; {@code others} lends pieces. */
    public static String of(String text, List<String> others, Random random) {
        String mangled = text;
        for (int damages = 1 + random.nextInt(4); damages > 0; damages--) {
            mangled = damaged(mangled, others.get(random.nextInt(others.size())), random);
        }
        return mangled;
    }

    /** A text that never was sound: tokens and pieces in any order. */
    public static String ofNothing(List<String> others, Random random) {
        StringBuilder text = new StringBuilder(random.nextBoolean() ? "# Is it?\n" : "");
        for (int pieces = random.nextInt(80); pieces > 0; pieces--) {
            String other = others.get(random.nextInt(others.size()));
            text.append(random.nextInt(3) == 0 ? piece(random) : line(other, random));
            text.append(random.nextInt(4) == 0 ? " " : "\n");
        }
        return text.toString();
    }

    private static String damaged(String text, String other, Random random) {
        int from = random.nextInt(text.length() + 1);
        int to = from + random.nextInt(Math.min(200, text.length() - from) + 1);
        return switch (random.nextInt(9)) {
            case 0 -> text.substring(0, from) + text.substring(to);
            case 1 -> text.substring(0, to) + text.substring(from);
            case 2 -> text.substring(0, from) + piece(random) + text.substring(from);
            case 3 -> text.substring(0, from) + line(other, random) + "\n" + text.substring(from);
            case 4 -> swapped(text, random);
            case 5 -> withToken(text, token(other, random), random);
            case 6 -> withToken(text, token(text, random), random);
            case 7 -> flipped(text, random);
            default -> text.replace(line(text, random), line(other, random));
        };
    }

    private static String piece(Random random) {
        return PIECES.get(random.nextInt(PIECES.size()));
    }

    private static String line(String text, Random random) {
        String[] lines = text.split("\n", -1);
        return lines[random.nextInt(lines.length)];
    }

    private static String token(String text, Random random) {
        List<String> tokens =
                TOKEN.matcher(text).results().map(found -> found.group()).toList();
        return tokens.isEmpty() ? "x" : tokens.get(random.nextInt(tokens.size()));
    }

    private static String withToken(String text, String token, Random random) {
        Matcher at = TOKEN.matcher(text);
        return at.find(random.nextInt(text.length() + 1))
                ? text.substring(0, at.start()) + token + text.substring(at.end())
                : text + token;
    }

    private static String swapped(String text, Random random) {
        String one = token(text, random);
        String two = token(text, random);
        return text.replaceFirst(Pattern.quote(one), Matcher.quoteReplacement(two))
                .replaceFirst(Pattern.quote(two), Matcher.quoteReplacement(one));
    }

    private static String flipped(String text, Random random) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        for (int flips = random.nextInt(3); flips >= 0 && bytes.length > 0; flips--) {
            bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
