package org.tunica.paper;

import java.util.List;

/**
 * What is to be printed.
 *
 * @param language of the texts, a BCP 47 tag such as {@code en}
 * @param title of the document
 * @param reference what it is about, printed on every page; no name of a person
 * @param mark the state of the document, printed on every page, such as DRAFT; empty for none
 * @param cautions printed on every page; a line or two each
 * @param sections in the order of reading
 */
public record Document(
        String language, String title, String reference, String mark, List<String> cautions, List<Section> sections) {

    public Document {
        if (!language.matches("[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*")) {
            throw new IllegalArgumentException("language must be a language tag such as en, got " + language);
        }
        cautions = List.copyOf(cautions);
        sections = List.copyOf(sections);
    }

    /**
     * A heading and what stands under it.
     *
     * @param aside whether it is for those who work with the document alone: it stays in ordinary letters where all else is large
     */
    public record Section(String heading, List<Block> blocks, boolean aside) {
        public Section {
            blocks = List.copyOf(blocks);
        }

        /** A section for every reader. */
        public Section(String heading, List<Block> blocks) {
            this(heading, blocks, false);
        }
    }
}
