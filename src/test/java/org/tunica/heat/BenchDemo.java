package org.tunica.heat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/** Makes {@code knowledge/demo/bench.csv} from the heat model with constants moved and seeded noise. */
final class BenchDemo {
    static final Path FILE = Path.of("knowledge/demo/bench.csv");
    static final Map<String, Double> TRUE_CONSTANTS =
            Map.of("heat.rf-bipolar.efficiency", 0.86, "heat.rf-bipolar.roll-off", 0.07, "heat.laser.film", 0.26);

    private static final String HEAD = """
            # Invented. No vein was cut: every depth was computed by the heat model of this project, and noise was added.
            # Made with heat.rf-bipolar.efficiency 0.86, heat.rf-bipolar.roll-off 0.07 and heat.laser.film 0.26, the other
            # constants as shipped; normal noise of 0.015 mm, seed 11, rounded to 0.01 mm, never beyond the wall.
            # date: 2026-03-01
            device,power_w,pullback_s_per_cm,cycles,pulses_per_cm,wall_mm,tumescent_mm,tumescent_c,killed_mm,delayed_mm,char_seen
            """;

    /** Device, setting as it stands in the file, and wall in mm. */
    private static final List<String> ROWS = List.of(
            "rf-bipolar-pullback,18,1,,,0.65",
            "rf-bipolar-pullback,18,2,,,0.80",
            "rf-bipolar-pullback,18,3,,,0.95",
            "rf-bipolar-pullback,18,4,,,1.10",
            "rf-bipolar-pullback,20,2,,,0.85",
            "rf-bipolar-pullback,22,1,,,0.70",
            "rf-bipolar-pullback,22,3,,,1.05",
            "rf-bipolar-pullback,15,4,,,1.00",
            "rf-bipolar-pullback,12,3,,,0.90",
            "rf-bipolar-pullback,12,6,,,1.20",
            "rf-bipolar-pullback,10,4,,,0.95",
            "rf-bipolar-pullback,6,6,,,0.85",
            "rf-bipolar-pullback,6,9,,,1.00",
            "rf-bipolar-pullback,6,12,,,0.65",
            "laser-1470-radial,10,2,,,0.60",
            "laser-1470-radial,10,3,,,0.65",
            "laser-1470-radial,10,4,,,0.70",
            "laser-1470-radial,10,5,,,0.80",
            "laser-1470-radial,10,6,,,0.90",
            "laser-1470-radial,10,8,,,0.65",
            "laser-1470-radial,8,4,,,0.70",
            "laser-1470-radial,8,6,,,0.85",
            "laser-1470-radial,12,3,,,0.75",
            "laser-1470-radial,12,4,,,0.90",
            "laser-1470-radial,6,5,,,0.70",
            "laser-1470-radial,6,8,,,0.85",
            "rf-segmental-7cm,,,1,,0.65",
            "rf-segmental-7cm,,,2,,0.90",
            "steam,,,,2,0.65");

    private BenchDemo() {}

    /** Writes the file anew after the model has changed. */
    public static void main(String[] arguments) throws IOException {
        Files.writeString(FILE, text());
    }

    static String text() {
        return text(new Random(11), 0.015, "%.2f");
    }

    /** The same rows without noise, to a micrometre. */
    static String exact() {
        return text(new Random(11), 0, "%.6f");
    }

    /** The same rows with noise of another seed. */
    static String noisy(long seed) {
        return text(new Random(seed), 0.015, "%.4f");
    }

    private static String text(Random random, double sdMm, String format) {
        HeatModel model = HeatModel.of(HeatKnowledge.constants(TRUE_CONSTANTS));
        StringBuilder text = new StringBuilder(HEAD);
        for (String row : ROWS) {
            String[] cells = row.split(",");
            double wallMm = Double.parseDouble(cells[5]);
            HeatRun run = model.run(setting(cells), VeinSlice.of(wallMm, 8, 25));
            double killedMm = measured(run.killDepthMm() + sdMm * random.nextGaussian(), 0, wallMm);
            double delayedMm = measured(run.delayedDepthMm() + sdMm * random.nextGaussian(), killedMm, wallMm);
            text.append(row)
                    .append(",8,25,")
                    .append(String.format(Locale.ROOT, format + "," + format, killedMm, delayedMm))
                    .append(run.chars() ? ",yes\n" : ",no\n");
        }
        return text.toString();
    }

    private static double measured(double depthMm, double leastMm, double mostMm) {
        return Math.max(leastMm, Math.min(mostMm, depthMm));
    }

    private static HeatSetting setting(String[] cells) {
        if (!cells[3].isEmpty()) {
            return new HeatSetting.Held(cells[0], Integer.parseInt(cells[3]));
        }
        return cells[4].isEmpty()
                ? new HeatSetting.Pulled(cells[0], Double.parseDouble(cells[1]), Double.parseDouble(cells[2]))
                : new HeatSetting.Pulsed(cells[0], Double.parseDouble(cells[4]));
    }
}
