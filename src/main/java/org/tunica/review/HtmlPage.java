package org.tunica.review;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.AttributeProvider;
import org.commonmark.renderer.html.HtmlRenderer;

/** Turns a page of Markdown into one HTML file that needs nothing else: no script, no picture, no address. */
final class HtmlPage {
    private static final List<Extension> TABLES = List.of(TablesExtension.create());
    private static final Parser PARSER = Parser.builder().extensions(TABLES).build();
    private static final String STYLE = "page.css";

    private HtmlPage() {}

    /** The page; HTML within the Markdown stays text. */
    static String of(String title, String markdown) {
        String body = HtmlRenderer.builder()
                .extensions(TABLES)
                .escapeHtml(true)
                .sanitizeUrls(true)
                .attributeProviderFactory(context -> new Anchors())
                .build()
                .render(PARSER.parse(markdown));
        return """
                <!DOCTYPE html>
                <html lang="en">
                <head>
                <meta charset="utf-8">
                <meta name="viewport" content="width=device-width, initial-scale=1">
                <title>%s</title>
                <style>
                %s</style>
                </head>
                <body>
                <main>
                %s</main>
                </body>
                </html>
                """.formatted(escaped(title), style(), body);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    private static String style() {
        try (InputStream in = HtmlPage.class.getResourceAsStream(STYLE)) {
            if (in == null) {
                throw new IllegalStateException(STYLE + " is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Gives each heading the name links use; the second of the same words gets a number. */
    private static final class Anchors implements AttributeProvider {
        private final Map<String, Integer> used = new HashMap<>();

        @Override
        public void setAttributes(Node node, String tag, Map<String, String> attributes) {
            if (node instanceof Heading heading) {
                String anchor = Ink.anchor(words(heading));
                int before = used.merge(anchor, 1, Integer::sum) - 1;
                attributes.put("id", before == 0 ? anchor : anchor + "-" + before);
            }
        }

        private static String words(Heading heading) {
            StringBuilder words = new StringBuilder();
            heading.accept(new AbstractVisitor() {
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
}
