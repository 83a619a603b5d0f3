package org.tunica.store;

import java.util.List;
import java.util.Optional;

/** Documents of cases in the table of that name. */
final class SqlCaseDocuments implements CaseDocuments {
    private final Pen pen;
    private final Shelf shelf;
    private final Cases cases;

    SqlCaseDocuments(Pen pen, Shelf shelf, Cases cases) {
        this.pen = pen;
        this.shelf = shelf;
        this.cases = cases;
    }

    @Override
    public KeptDocument keep(Actor by, NewDocument document) {
        String what = document.kind().word() + " of case " + document.caseRef();
        Texts.kept(what, document.body());
        Texts.kept(what, document.origin().releaseVersion());
        Texts.kept(what, document.origin().releaseDigest());
        return pen.write(() -> {
            if (cases.version(document.caseRef(), document.caseVersion()).isEmpty()) {
                throw Texts.fault(what, "there is no version " + document.caseVersion() + " of this case");
            }
            long number = last(document) + 1;
            Stamp stamp = pen.keep(by, document.kind().act(), Table.DOCUMENTS, values(document, number));
            return new KeptDocument(document, number, stamp);
        });
    }

    private long last(NewDocument document) {
        return shelf.one(
                        "t.case_ref = ? and t.kind = ? order by t.number desc limit 1",
                        document.caseRef(),
                        document.kind().word())
                .map(kept -> kept.row().number("number"))
                .orElse(0L);
    }

    @Override
    public List<KeptDocument> of(String caseRef, DocumentKind kind) {
        return shelf.many("t.case_ref = ? and t.kind = ? order by t.number", caseRef, kind.word()).stream()
                .map(SqlCaseDocuments::of)
                .toList();
    }

    @Override
    public List<KeptDocument> newest(DocumentKind kind, Page page) {
        return shelf.newest(page, "t.kind = ?", kind.word()).stream()
                .map(SqlCaseDocuments::of)
                .toList();
    }

    @Override
    public Optional<KeptDocument> one(String caseRef, DocumentKind kind, long number) {
        return shelf.one("t.case_ref = ? and t.kind = ? and t.number = ?", caseRef, kind.word(), number)
                .map(SqlCaseDocuments::of);
    }

    private static List<String> values(NewDocument document, long number) {
        return List.of(
                document.caseRef(),
                document.kind().word(),
                Long.toString(number),
                Long.toString(document.caseVersion()),
                document.origin().releaseVersion(),
                document.origin().releaseDigest(),
                Long.toString(document.origin().seed()),
                document.body());
    }

    private static KeptDocument of(Shelf.Kept kept) {
        Row row = kept.row();
        return new KeptDocument(
                new NewDocument(
                        Words.of(DocumentKind.class, row.text("kind")),
                        row.text("case_ref"),
                        row.number("case_version"),
                        new Origin(row.text("release_version"), row.text("release_digest"), row.number("seed")),
                        row.text("body")),
                row.number("number"),
                kept.stamp());
    }
}
