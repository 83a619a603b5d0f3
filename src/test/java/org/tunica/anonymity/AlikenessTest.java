package org.tunica.anonymity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Held against the example of the paper on diversity: ACM TKDD 2007;1(1):3. Its rows are from memory; that they give what the
 * paper calls 4-anonymous and 3-diverse was recomputed.
 */
class AlikenessTest {
    private static final List<Row> ROWS = Stream.of(
                    "13053,28,Russian,Heart",
                    "13068,29,American,Heart",
                    "13068,21,Japanese,Viral",
                    "13053,23,American,Viral",
                    "14853,50,Indian,Cancer",
                    "14853,55,Russian,Heart",
                    "14850,47,American,Viral",
                    "14850,49,American,Viral",
                    "13053,31,American,Cancer",
                    "13053,37,Indian,Cancer",
                    "13068,36,Japanese,Cancer",
                    "13068,35,American,Cancer")
            .map(line -> List.of(line.split(",")))
            .map(cells -> new Row(cells.subList(0, 3), cells.get(3)))
            .toList();

    private static final List<Ladder> LADDERS = List.of(
            ladder("place", cut(4), first -> first.startsWith("148") ? first.substring(0, 4) : first.substring(0, 3)),
            ladder(
                    "age",
                    age -> Integer.parseInt(age) <= 40 ? "<=40" : ">40",
                    age -> Integer.parseInt(age) < 30 ? "<30" : Integer.parseInt(age) >= 40 ? ">=40" : "3*"),
            new Ladder("nationality", List.of(Ladder.Rung.exact("as it is"), Ladder.Rung.untold())));

    @Test
    void nothingRecoded_everyRecordStandsAlone() {
        Alikeness alike = alike(0, 0, 0);
        assertEquals(
                List.of(1, 1, 12),
                List.of(alike.k(), alike.distinctL(), alike.groups().size()));
    }

    @Test
    void recodingByDecades_isFourAlikeButOneGroupHasOneDisease() {
        Alikeness alike = alike(2, 2, 1);
        assertEquals(List.of(4, 1), List.of(alike.k(), alike.distinctL()));
        assertEquals(
                List.of(4, 4, 4),
                alike.groups().stream().map(Alikeness.Group::size).toList());
    }

    @Test
    void recodingAtForty_isFourAlikeWithThreeDiseasesEach() {
        Alikeness alike = alike(1, 1, 1);
        assertEquals(List.of(4, 3), List.of(alike.k(), alike.distinctL()));
        assertEquals(
                List.of(4, 4, 4),
                alike.groups().stream().map(Alikeness.Group::size).toList());
    }

    @Test
    void recordsInGroupsBelowK_areCounted() {
        assertEquals(12, alike(0, 0, 0).below(2));
        assertEquals(0, alike(1, 1, 1).below(4));
        assertEquals(12, alike(1, 1, 1).below(5));
    }

    /** Own arithmetic: (1/2 + 1/2 + 1) / 3. */
    @Test
    void loss_isTheMeanHeightOnTheLadders() {
        assertEquals(2.0 / 3, new Recoding(List.of(1, 1, 1)).lossShare(LADDERS), 1e-12);
        assertEquals(0, Recoding.none(LADDERS).lossShare(LADDERS));
        assertEquals(18, Recoding.all(LADDERS).size());
    }

    @Test
    void triedRecodings_comeMildestFirstAndTheMildestThatHoldsIsFound() {
        List<Tried> tried = Tried.all(ROWS, LADDERS, 4);
        for (int i = 1; i < tried.size(); i++) {
            assertTrue(tried.get(i - 1).lossShare() <= tried.get(i).lossShare());
        }
        Tried mildest =
                tried.stream().filter(one -> one.heldBack() == 0).findFirst().orElseThrow();
        assertEquals(new Recoding(List.of(1, 1, 1)), mildest.recoding());
    }

    /** The example of Sweeney, Int J Uncertain Fuzz 2002;10(5):557-570: race, year of birth, sex, place; rows from memory. */
    @Test
    void tableOfElevenPeople_isTwoAlike() {
        List<Row> rows = Stream.of(
                        "Black,1965,m,0214*,short breath",
                        "Black,1965,m,0214*,chest pain",
                        "Black,1965,f,0213*,hypertension",
                        "Black,1965,f,0213*,hypertension",
                        "Black,1964,f,0213*,obesity",
                        "Black,1964,f,0213*,chest pain",
                        "White,1964,m,0213*,chest pain",
                        "White,1964,m,0213*,obesity",
                        "White,1964,m,0213*,short breath",
                        "White,1967,m,0213*,chest pain",
                        "White,1967,m,0213*,chest pain")
                .map(line -> List.of(line.split(",")))
                .map(cells -> new Row(cells.subList(0, 4), cells.get(4)))
                .toList();
        List<Ladder> exact = Stream.of("race", "born", "sex", "place")
                .map(name -> new Ladder(name, List.of(Ladder.Rung.exact("as it is"))))
                .toList();
        Alikeness alike = Alikeness.of(rows, exact, Recoding.none(exact));
        assertEquals(List.of(2, 1), List.of(alike.k(), alike.distinctL()));
        assertEquals(
                List.of(2, 2, 2, 2, 3),
                alike.groups().stream().map(Alikeness.Group::size).toList());
        assertEquals(
                List.of(1, 1, 2, 2, 3),
                alike.groups().stream().map(Alikeness.Group::different).sorted().toList());
    }

    @Test
    void rowsThatAreTheSame_countAsManyTimes() {
        List<Row> counted = List.of(new Row(List.of("a"), "x", 3), new Row(List.of("a"), "y", 2));
        List<Ladder> one = List.of(new Ladder("one", List.of(Ladder.Rung.exact("as it is"))));
        Alikeness alike = Alikeness.of(counted, one, Recoding.none(one));
        assertEquals(List.of(5, 2), List.of(alike.k(), alike.distinctL()));
    }

    @Test
    void emptyTable_hasNoGroup() {
        assertEquals(0, Alikeness.of(List.of(), LADDERS, Recoding.none(LADDERS)).k());
    }

    private static Alikeness alike(Integer... rungs) {
        return Alikeness.of(ROWS, LADDERS, new Recoding(List.of(rungs)));
    }

    private static UnaryOperator<String> cut(int digits) {
        return code -> code.substring(0, digits);
    }

    private static Ladder ladder(String name, UnaryOperator<String> milder, UnaryOperator<String> other) {
        return new Ladder(
                name,
                List.of(
                        Ladder.Rung.exact("as it is"),
                        new Ladder.Rung("coarser", milder),
                        new Ladder.Rung("coarser", other)));
    }
}
