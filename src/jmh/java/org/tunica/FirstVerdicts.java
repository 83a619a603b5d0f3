package org.tunica;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.physics.Derived;
import org.tunica.rules.Considered;
import org.tunica.rules.OptionFacts;

/** A program that ends with its first verdicts: release loaded, case read, all rules judged on one segment. */
public final class FirstVerdicts {
    private FirstVerdicts() {}

    /** Judges the first segment of the case file named. */
    public static void main(String[] args) throws IOException {
        Tunica tunica = Tunica.shipped();
        CaseFile caseFile = tunica.readCase(args[0], Files.readAllBytes(Path.of(args[0])));
        Limb limb = caseFile.limbs().get(0);
        Segment segment = limb.segments().get(0);
        Derived derived = tunica.physics().derive(caseFile, segment);
        List<OptionFacts> options = tunica.knowledge().techniques().values().stream()
                .map(technique -> tunica.rules().facts(new Considered(caseFile, limb, segment, technique, derived)))
                .toList();
        System.out.println(tunica.rules().judge(options).size() + " verdicts");
    }
}
