package org.tunica.store;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Cards in the table of that name. */
final class SqlCardBook implements CardBook {
    private static final String ID = "[A-Za-z0-9][A-Za-z0-9._-]{0,99}";
    private static final String SEPARATOR = " ";

    private final Pen pen;
    private final Shelf shelf;

    SqlCardBook(Pen pen, Shelf shelf) {
        this.pen = pen;
        this.shelf = shelf;
    }

    @Override
    public void keep(Actor by, GivenCard card) {
        Texts.shaped("card", card.card(), ID);
        Texts.shaped("service", card.service(), ID);
        List<String> values = List.of(
                card.card(),
                card.service(),
                card.releaseVersion(),
                card.releaseDigest(),
                card.technique(),
                card.standing(),
                String.join(SEPARATOR, card.rules()));
        pen.keep(by, Act.CARD_GIVEN, Table.CARDS, values);
    }

    @Override
    public Optional<GivenCard> one(String card) {
        return shelf.one("t.card = ?", card).map(kept -> of(kept.row()));
    }

    private static GivenCard of(Row row) {
        return new GivenCard(
                row.text("card"),
                row.text("service"),
                row.text("release_version"),
                row.text("release_digest"),
                row.text("technique"),
                row.text("standing"),
                rules(row.text("rules")));
    }

    private static Set<String> rules(String written) {
        return written.isEmpty() ? Set.of() : new TreeSet<>(List.of(written.split(SEPARATOR)));
    }
}
