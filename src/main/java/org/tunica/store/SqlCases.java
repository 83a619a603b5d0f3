package org.tunica.store;

import java.util.List;
import java.util.Optional;
import org.tunica.casefile.CaseFile;

/** Cases in the table of that name. */
final class SqlCases implements Cases {
    private final Pen pen;
    private final Shelf shelf;

    SqlCases(Pen pen, Shelf shelf) {
        this.pen = pen;
        this.shelf = shelf;
    }

    @Override
    public KeptCase save(Actor by, String caseRef, long seen, String json) {
        Texts.shaped("caseRef", caseRef, CaseFile.REFERENCE);
        Texts.kept("case " + caseRef, json);
        return pen.write(() -> {
            long latest = latest(caseRef).map(KeptCase::version).orElse(NONE);
            if (latest != seen) {
                throw new OutOfDate("case " + caseRef + ": version " + latest
                        + " is the latest, this was made from version " + seen);
            }
            long next = latest + 1;
            List<String> values = List.of(caseRef, Long.toString(next), json);
            return new KeptCase(caseRef, next, json, pen.keep(by, Act.CASE_SAVED, Table.CASES, values));
        });
    }

    @Override
    public Optional<KeptCase> latest(String caseRef) {
        return shelf.one("t.case_ref = ? order by t.version desc limit 1", caseRef)
                .map(SqlCases::of);
    }

    @Override
    public Optional<KeptCase> version(String caseRef, long version) {
        return shelf.one("t.case_ref = ? and t.version = ?", caseRef, version).map(SqlCases::of);
    }

    @Override
    public List<KeptCase> history(String caseRef) {
        return shelf.many("t.case_ref = ? order by t.version", caseRef).stream()
                .map(SqlCases::of)
                .toList();
    }

    @Override
    public List<KeptCase> newest(Page page) {
        return shelf
                .newest(
                        page,
                        "not exists (select 1 from cases n where n.case_ref = t.case_ref and n.version > t.version)")
                .stream()
                .map(SqlCases::of)
                .toList();
    }

    private static KeptCase of(Shelf.Kept kept) {
        Row row = kept.row();
        return new KeptCase(row.text("case_ref"), row.number("version"), row.text("body"), kept.stamp());
    }
}
