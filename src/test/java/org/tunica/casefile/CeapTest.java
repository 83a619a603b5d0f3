package org.tunica.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The notation of CEAP 2020: classes and causes S-0081 and S-0082; suffix, P letters and labels from memory, unverified. */
class CeapTest {
    @Test
    void readsEveryPart() {
        Ceap ceap = good("C2,4as,Ep,As(GSVa,SSV),p(CPV),Pr");
        assertEquals(Set.of(Limb.CeapClass.C2, Limb.CeapClass.C4A), ceap.clinical());
        assertEquals(Limb.CeapClass.C4A, ceap.highest());
        assertEquals(Optional.of(Ceap.Symptoms.SYMPTOMATIC), ceap.symptoms());
        assertEquals(Set.of(Ceap.Cause.PRIMARY), ceap.causes());
        assertEquals(
                Set.of(NamedVein.GREAT_SAPHENOUS_ABOVE_KNEE, NamedVein.SMALL_SAPHENOUS),
                ceap.anatomy().get(Ceap.Site.SUPERFICIAL));
        assertEquals(Set.of(NamedVein.CALF_PERFORATING), ceap.anatomy().get(Ceap.Site.PERFORATING));
        assertEquals(Set.of(Ceap.Flow.REFLUX), ceap.flow());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "C0a",
                "C3s,Ep,As(GSVa),Pr",
                "C2r,6rs,Esi,As,d(FV,POPV),Pr,o",
                "C1,En,An,Pn",
                "C4aa",
                "C4as,Ese",
                "C5"
            })
    void whatIsReadIsPrintedTheSame(String notation) {
        assertEquals(notation, good(notation).toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    C3 s, E p, A s (GSVa), P r | C3s,Ep,As(GSVa),Pr
                    C6,2r,3,s                  | C2r,3,6s
                    C3a                        | C3a
                    """)
    void blanksAndOrderDoNotMatter(String written, String printed) {
        assertEquals(printed, good(written).toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    C7                | is no clinical class
                    C4s               | is no clinical class
                    C2,2              | C2 stands twice
                    C0,2              | stands alone
                    C2s,3a            | either s
                    Ep                | must name a clinical class
                    s                 | must start with C
                    C2,Eq             | "Eq" is not known
                    C2,En,p           | En means none found
                    C2,As(CPV)        | CPV is not one of the veins of As but of Ap
                    C2,As(GSWa)       | "GSWa" names no vein; did you mean "GSVa"?
                    C2,As(GSVa,GSVa)  | GSVa stands twice
                    C2,As()           | names no vein
                    C2,Ep(GSVa)       | veins in brackets belong behind A
                    C2,Pr,Ep          | E comes after P
                    C2,As,s           | As stands twice
                    C2,As(GSVa        | is no part
                    C2,,Pr            | is no part
                    C2,Pr,Po          | P stands twice
                    """)
    void whatIsWrongIsSaid(String written, String expected) {
        List<Fault> faults = faults(written);
        assertTrue(faults.stream().anyMatch(fault -> fault.says().contains(expected)), faults::toString);
    }

    @Test
    void everyFaultAtOnce() {
        assertEquals(4, faults("C9,Ex,As(ABC),Pz").size());
    }

    @Test
    void aTextWithoutEndIsNotRead() {
        assertTrue(faults("C2,".repeat(100)).get(0).says().contains("at most 200"));
    }

    @Property(seed = "20260101")
    void anyRecordPrintsAndReadsBack(
            @ForAll Set<Limb.CeapClass> classes,
            @ForAll Optional<Ceap.Symptoms> symptoms,
            @ForAll Set<NamedVein> veins,
            @ForAll Ceap.Cause cause,
            @ForAll Ceap.Flow flow) {
        Set<Limb.CeapClass> clinical =
                classes.isEmpty() || classes.contains(Limb.CeapClass.C0) ? Set.of(Limb.CeapClass.C0) : classes;
        Map<Ceap.Site, Set<NamedVein>> anatomy = new EnumMap<>(Ceap.Site.class);
        for (NamedVein vein : veins) {
            anatomy.merge(vein.site(), Set.of(vein), CeapTest::union);
        }
        Ceap ceap = new Ceap(clinical, symptoms, Set.of(cause), anatomy, Set.of(flow));
        assertEquals(ceap, good(ceap.toString()));
    }

    private static Set<NamedVein> union(Set<NamedVein> a, Set<NamedVein> b) {
        Set<NamedVein> both = new HashSet<>(a);
        both.addAll(b);
        return both;
    }

    private static Ceap good(String text) {
        Faults faults = new Faults();
        Optional<Ceap> read = Ceap.read("$.ceap", text, faults);
        assertEquals(List.of(), faults.list());
        return read.orElseThrow();
    }

    private static List<Fault> faults(String text) {
        Faults faults = new Faults();
        assertTrue(Ceap.read("$.ceap", text, faults).isEmpty());
        return faults.list();
    }
}
