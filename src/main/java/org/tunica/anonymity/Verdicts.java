package org.tunica.anonymity;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Judges each chunk of one text. */
final class Verdicts {
    /** So many measurements in a row could spell a number. */
    private static final int A_ROW = 3;

    private static final Pattern JOINTS = Pattern.compile("[-/]");
    private static final Pattern LETTERS = Pattern.compile("[A-Za-z]+(?:[-/][A-Za-z]+)*(?:'s)?");
    private static final Pattern LOWER = Pattern.compile("[a-z]+");

    private final Vocabulary vocabulary;
    private final Phrases phrases;
    private final List<Chunk> chunks;
    private final Measure measure;
    private final boolean[] keep;
    private final boolean[] measured;
    private final boolean[] unclear;

    Verdicts(Vocabulary vocabulary, Phrases phrases, List<Chunk> chunks) {
        this.vocabulary = vocabulary;
        this.phrases = phrases;
        this.chunks = chunks;
        this.measure = new Measure(vocabulary);
        this.keep = new boolean[chunks.size()];
        this.measured = new boolean[chunks.size()];
        this.unclear = new boolean[chunks.size()];
    }

    boolean[] keep() {
        int at = 0;
        while (at < chunks.size()) {
            at += at > 0 && title(chunks.get(at - 1)) ? named(at) : judge(at);
        }
        rows();
        unclearOnes();
        return keep.clone();
    }

    /** Keeps what may stay from here on and tells how many chunks it looked at. */
    private int judge(int at) {
        int phrase = phrases.at(chunks, at, opens(at));
        if (phrase > 0) {
            Arrays.fill(keep, at, at + phrase, true);
            return phrase;
        }
        Chunk chunk = chunks.get(at);
        Optional<UnitSpan> glued = measure.glued(chunk);
        if (glued.filter(UnitSpan::clear).isPresent()) {
            return measured(at, 1, glued.get());
        }
        Optional<UnitSpan> parted =
                at + 1 < chunks.size() ? measure.parted(chunk, chunks.get(at + 1)) : Optional.empty();
        if (parted.isPresent()) {
            return measured(at, 2, parted.get());
        }
        keep[at] = vocabulary.abbreviations().contains(chunk.core()) || word(chunk, opens(at));
        return 1;
    }

    private int measured(int at, int length, UnitSpan span) {
        for (int i = at; i < at + length; i++) {
            keep[i] = true;
            measured[i] = true;
            unclear[i] = !span.clear();
        }
        return length;
    }

    private boolean opens(int at) {
        return at == 0 || chunks.get(at - 1).endsSentence();
    }

    private boolean word(Chunk chunk, boolean opens) {
        if (!LETTERS.matcher(chunk.core()).matches() || title(chunk)) {
            return false;
        }
        String plain = chunk.core().replaceAll("'s$", "");
        String small = plain.substring(0, 1).toLowerCase(Locale.ROOT) + plain.substring(1);
        if (chunk.capital()) {
            return opens && vocabulary.openers().contains(small);
        }
        return vocabulary.has(plain)
                || Arrays.stream(JOINTS.split(plain))
                        .allMatch(part -> LOWER.matcher(part).matches() && vocabulary.has(part));
    }

    private boolean title(Chunk chunk) {
        return vocabulary.titles().contains(chunk.core().toLowerCase(Locale.ROOT));
    }

    /** After a title somebody is named: the next chunk goes, and on as long as chunks look like more of the name. */
    private int named(int from) {
        int at = from + 1;
        while (at < chunks.size()
                && !chunks.get(at - 1).endsSentence()
                && (chunks.get(at).capital() || !word(chunks.get(at), false))) {
            at++;
        }
        return at - from;
    }

    /** Figures side by side could spell a number, the more so where one of them had to go. */
    private void rows() {
        int from = 0;
        while (from < keep.length) {
            int to = from;
            while (to < keep.length && figures(to)) {
                to++;
            }
            if (spells(from, to)) {
                Arrays.fill(keep, from, to, false);
            }
            from = Math.max(to, from + 1);
        }
    }

    private boolean figures(int at) {
        return measured[at] || chunks.get(at).core().chars().anyMatch(Character::isDigit);
    }

    private boolean spells(int from, int to) {
        int numbers = 0;
        boolean allMeasured = true;
        for (int i = from; i < to; i++) {
            numbers += Character.isDigit(chunks.get(i).core().charAt(0)) ? 1 : 0;
            allMeasured &= measured[i];
        }
        return numbers >= A_ROW || !allMeasured && numbers > 1;
    }

    /** A unit of one letter could be an initial or belong to an address: it stays only among words that stay. */
    private void unclearOnes() {
        boolean[] before = keep.clone();
        for (int i = 0; i < keep.length; i++) {
            boolean alone = i == 0 && keep.length == 1;
            boolean beside = i > 0 && !before[i - 1] || i + 1 < keep.length && !before[i + 1];
            if (unclear[i] && (alone || beside)) {
                keep[i] = false;
            }
        }
    }
}
