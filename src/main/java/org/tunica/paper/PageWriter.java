package org.tunica.paper;

import java.util.List;
import java.util.Map;

/** Writes a document as XHTML that stands alone. */
final class PageWriter {
    private static final String XHTML = "http://www.w3.org/1999/xhtml";

    /** Cells of so many letters are not broken into lines. */
    private static final int KEPT_WHOLE = 16;

    private final String css;

    PageWriter(String css) {
        this.css = css;
    }

    /** One head element, body and all; readable as XML and as HTML. */
    String write(Document document, Lettering lettering) {
        Markup out = new Markup();
        out.open("html", Map.of("xmlns", XHTML, "lang", document.language()));
        head(document, out);
        out.open("body", lettering == Lettering.LARGE ? Map.of("class", "large") : Map.of());
        running(document, out);
        out.element("h1", document.title());
        document.sections().forEach(section -> section(section, out));
        return out.close("body").close("html").toString();
    }

    private void head(Document document, Markup out) {
        out.open("head").wellFormed("<meta charset=\"utf-8\"/>\n");
        out.wellFormed("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
        out.element("title", document.title() + ", " + document.reference());
        out.open("style").wellFormed(css).close("style").close("head");
    }

    /** What stands on every page; on a screen it stands at the top once. */
    private static void running(Document document, Markup out) {
        out.open("div", Map.of("class", "head"));
        if (!document.mark().isEmpty()) {
            out.element("span", Map.of("class", "mark"), document.mark()).text(" ");
        }
        out.element("span", document.title() + ", " + document.reference()).close("div");
        out.open("div", Map.of("class", "caution"));
        document.cautions().forEach(caution -> out.element("p", caution));
        out.close("div");
    }

    private static void section(Document.Section section, Markup out) {
        out.open("section", section.aside() ? Map.of("class", "aside") : Map.of())
                .element("h2", section.heading());
        section.blocks().forEach(block -> block(block, out));
        out.close("section");
    }

    private static void block(Block block, Markup out) {
        if (block instanceof Block.Heading heading) {
            out.element("h3", heading.text());
        } else if (block instanceof Block.Paragraph paragraph) {
            out.element("p", paragraph.text());
        } else if (block instanceof Block.Warning warning) {
            out.element("p", Map.of("class", "warning"), warning.text());
        } else if (block instanceof Block.Points points) {
            points(points.items(), out);
        } else if (block instanceof Block.Lines lines) {
            lines(lines.lines(), out);
        } else if (block instanceof Block.Table table) {
            table(table, out);
        } else if (block instanceof Block.Drawing drawing) {
            out.open("div", Map.of("class", "drawing"))
                    .wellFormed(Drawings.markup(drawing))
                    .close("div");
        }
    }

    private static void points(List<String> items, Markup out) {
        if (!items.isEmpty()) {
            out.open("ul");
            items.forEach(item -> out.element("li", item));
            out.close("ul");
        }
    }

    private static void lines(List<Block.Line> lines, Markup out) {
        if (lines.isEmpty()) {
            return;
        }
        out.open("table", Map.of("class", "lines")).open("tbody");
        for (Block.Line line : lines) {
            out.open("tr")
                    .element("th", Map.of("scope", "row"), line.label())
                    .element("td", line.text())
                    .close("tr");
        }
        out.close("tbody").close("table");
    }

    /** A number and its unit stay together; the last column takes what is long. */
    private static void cell(String text, boolean last, Markup out) {
        boolean whole = !last && text.length() <= KEPT_WHOLE;
        out.element("td", whole ? Map.of("class", "whole") : Map.of(), text);
    }

    private static void table(Block.Table table, Markup out) {
        out.open("table", Map.of("class", "grid")).open("thead").open("tr");
        table.head().forEach(cell -> out.element("th", Map.of("scope", "col"), cell));
        out.close("tr").close("thead").open("tbody");
        for (List<String> row : table.rows()) {
            out.open("tr");
            for (int i = 0; i < row.size(); i++) {
                cell(row.get(i), i == row.size() - 1, out);
            }
            out.close("tr");
        }
        out.close("tbody").close("table");
    }
}
