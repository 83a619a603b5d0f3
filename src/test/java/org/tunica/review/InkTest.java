package org.tunica.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;

/** Whatever a text holds, a reader of the page sees that text, in a line and in a cell. */
class InkTest {
    private static final Parser PARSER =
            Parser.builder().extensions(List.of(TablesExtension.create())).build();

    @Property(tries = 2000, seed = "20")
    void aTextReadsAsItself(@ForAll("texts") String text) {
        assertEquals(
                text, read(new Markdown().paragraph("x" + text + "x").text()).replaceAll("^x|x$", ""));
        assertEquals(text.strip(), read(new Markdown().paragraph(text).text()));
        assertEquals("head" + text.strip(), read(table(Ink.text(text))));
    }

    @Property(tries = 1000, seed = "21")
    void codeReadsAsItself(@ForAll("texts") String text) {
        assertEquals(
                "x" + text + "x",
                read(new Markdown().paragraph(Ink.code("x" + text + "x")).text()));
        assertEquals("headx" + text + "x", read(table(Ink.code("x" + text + "x"))));
    }

    @Provide
    Arbitrary<String> texts() {
        return Arbitraries.strings()
                .withChars("ab1 .-+*_`|\\<>[]()#!&~=:\"'$^{}/;")
                .ofMinLength(1)
                .ofMaxLength(12)
                .filter(text -> !text.isBlank());
    }

    private static String table(Ink cell) {
        return new Markdown().table(List.of("head"), List.of(List.of(cell))).text();
    }

    /** The words of a page, all markup gone. */
    private static String read(String markdown) {
        StringBuilder words = new StringBuilder();
        PARSER.parse(markdown).accept(new AbstractVisitor() {
            @Override
            public void visit(Text text) {
                words.append(text.getLiteral());
            }

            @Override
            public void visit(Code code) {
                words.append(code.getLiteral());
            }
        });
        return words.toString();
    }
}
