package org.tunica.meeting;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Patient;
import org.tunica.casefile.Segment;
import org.tunica.casefile.Word;
import org.tunica.paper.Block;
import org.tunica.pastcases.Band;
import org.tunica.pastcases.NamelessCase;
import org.tunica.wording.SettingWords;

/** A case without the person, in labelled lines. What is not recorded says so. */
final class CaseDescription {
    private static final String UNKNOWN = "not recorded";

    private CaseDescription() {}

    static Block patient(NamelessCase nameless) {
        Patient patient = nameless.caseFile().patient();
        List<Block.Line> lines = new ArrayList<>();
        line(lines, "Age, years", band(nameless.ageBandYears()));
        line(lines, "Weight, kg", band(nameless.weightBandKg()));
        line(lines, "Sex", word(patient.sex()));
        line(lines, "Pregnant; breastfeeding", flag(patient.pregnant()) + "; " + flag(patient.breastfeeding()));
        line(lines, "Anticoagulation", word(patient.anticoagulation()));
        line(lines, "Mobility", word(patient.mobility()));
        line(
                lines,
                "Can lie head down; flat; prone",
                flag(patient.canLie().headDown()) + "; "
                        + flag(patient.canLie().flat()) + "; "
                        + flag(patient.canLie().prone()));
        line(lines, "Allergies", ids(patient.allergies()));
        line(lines, "Conditions", ids(patient.conditions()));
        return new Block.Lines(lines);
    }

    static Block limb(Limb limb) {
        List<Block.Line> lines = new ArrayList<>();
        line(lines, "Clinical class (CEAP)", limb.ceapClass().map(Word::word).orElse(UNKNOWN));
        line(lines, "Deep veins", word(limb.deepVeins()));
        line(lines, "Trunk is the main way out", flag(limb.trunkIsMainOutflow()));
        line(lines, "Ankle brachial index", number(limb.ankleBrachialIndex(), ""));
        return new Block.Lines(lines);
    }

    static Block segment(Segment segment) {
        List<Block.Line> lines = new ArrayList<>();
        line(
                lines,
                "Lumen; wall",
                number(segment.lumenDiameterMm(), " mm") + "; " + number(segment.wallThicknessMm(), " mm"));
        line(
                lines,
                "Measured",
                "posture " + word(segment.measured().posture()) + "; in spasm "
                        + flag(segment.measured().inSpasm()));
        line(
                lines,
                "Length; straight part",
                number(segment.lengthCm(), " cm") + "; " + number(segment.straightCm(), " cm"));
        line(lines, "Depth to the skin", number(segment.depthToSkinMm(), " mm"));
        line(
                lines,
                "Nearest nerve",
                word(segment.nerve().name()) + ", gap " + number(segment.nerve().gapMm(), " mm"));
        line(lines, "Reflux", number(segment.refluxSeconds(), " s"));
        line(lines, "Course; within the fascia", word(segment.course()) + "; " + flag(segment.withinFascia()));
        line(lines, "Thrombus", word(segment.thrombus()));
        line(lines, "Earlier treatment", word(segment.earlierTreatment()));
        line(lines, "Upper end to the deep junction", number(segment.topToDeepJunctionCm(), " cm"));
        return new Block.Lines(lines);
    }

    /** Side in full, vein and level. */
    static String title(Limb limb, Segment segment) {
        return segment.ref() + ": " + limb.side().word().toUpperCase(Locale.ROOT) + " leg, " + spaced(segment.vein())
                + ", " + spaced(segment.level());
    }

    private static void line(List<Block.Line> lines, String label, String text) {
        lines.add(new Block.Line(label, text));
    }

    private static String band(Optional<Band> band) {
        return band.map(known -> known.toString().replace("-", " ").replaceAll("(\\d) (\\d)", "$1 to $2"))
                .orElse(UNKNOWN);
    }

    private static String word(Optional<? extends Word> word) {
        return word.map(CaseDescription::spaced).orElse(UNKNOWN);
    }

    private static String spaced(Word word) {
        return word.word().replace('-', ' ');
    }

    private static String flag(Optional<Boolean> flag) {
        return flag.map(yes -> yes ? "yes" : "no").orElse(UNKNOWN);
    }

    private static String number(OptionalDouble number, String unit) {
        return number.isPresent() ? SettingWords.plain(number.getAsDouble()) + unit : UNKNOWN;
    }

    private static String ids(Optional<? extends Collection<String>> ids) {
        return ids.map(known -> known.isEmpty()
                        ? "none"
                        : known.stream()
                                .sorted()
                                .map(id -> id.replace('-', ' '))
                                .collect(Collectors.joining(", ")))
                .orElse(UNKNOWN);
    }
}
