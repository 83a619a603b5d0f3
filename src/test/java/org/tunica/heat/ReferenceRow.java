package org.tunica.heat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** One row of the reference model's regression table. */
record ReferenceRow(List<String> head, List<String> cells) {
    static List<String> lines(String file) {
        try (InputStream in = ReferenceRow.class.getResourceAsStream("/heat/" + file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        } catch (IOException e) {
            throw new IllegalStateException(file, e);
        }
    }

    static List<ReferenceRow> all() {
        List<String> lines = lines("regression.csv");
        List<String> head = List.of(lines.get(1).split(",", -1));
        return lines.stream()
                .skip(2)
                .map(line -> new ReferenceRow(head, List.of(line.split(",", -1))))
                .toList();
    }

    private String text(String column) {
        return cells.get(head.indexOf(column));
    }

    double number(String column) {
        return Double.parseDouble(text(column));
    }

    Contact contact() {
        String device = text("device");
        return device.endsWith("_near")
                ? Contact.NEAR_SIDE
                : device.endsWith("_far") ? Contact.FAR_SIDE : Contact.CONCENTRIC;
    }

    HeatSetting setting() {
        String device = text("device").replace("_near", "").replace("_far", "");
        double second = number("pullback_s_per_cm");
        String nm = text("wavelength_nm");
        Map<String, String> ids = Map.of(
                "rf_bipolar", "rf-bipolar-pullback",
                "rf_segment7", "rf-segmental-7cm",
                "laser_radial", "laser-" + nm + "-radial",
                "laser_bare", "laser-" + nm + "-forward",
                "laser_jacket", "laser-" + nm + "-jacket",
                "microwave", "microwave",
                "steam", "steam");
        return switch (device) {
            case "rf_segment7" -> new HeatSetting.Held(ids.get(device), (int) second);
            case "steam" -> new HeatSetting.Pulsed(ids.get(device), second);
            default -> new HeatSetting.Pulled(ids.get(device), number("power_W"), second);
        };
    }

    /** Half a percent (near sides: ten), or the absolute allowance where that is more. */
    void compare(String column, double ours, double allowance, List<String> faults) {
        double theirs = number(column);
        double share = contact() == Contact.NEAR_SIDE ? 0.10 : 0.005;
        if (!(Math.abs(ours - theirs) <= Math.max(share * Math.abs(theirs), allowance))) {
            faults.add(cells.subList(0, 4) + " " + column + ": " + ours + ", reference " + theirs);
        }
    }
}
