package org.tunica.heat;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/** All constants of the heat model, read by id from knowledge/tissue.yaml and knowledge/heat-devices.yaml. Immutable. */
public final class HeatConstants {
    private static final int[] WAVELENGTHS_NM = {810, 940, 980, 1320, 1470, 1940};
    private static final int[] ELEMENTS_CM = {7, 3};

    private final TissueConstants tissue;
    private final Validity validity;
    private final LaserCommon laser;
    private final Map<String, HeatDevice> devices;

    private HeatConstants(ToDoubleFunction<String> number) {
        tissue = TissueConstants.from(number);
        validity = Validity.from(number);
        laser = LaserCommon.from(number);
        devices = devices(number, laser);
    }

    /**
     * Reads every constant.
     *
     * @param number the value of an id, in the unit knowledge/ states; it throws for an id it does not know
     */
    public static HeatConstants from(ToDoubleFunction<String> number) {
        return new HeatConstants(number);
    }

    private static Map<String, HeatDevice> devices(ToDoubleFunction<String> number, LaserCommon laser) {
        Map<String, HeatDevice> devices = new LinkedHashMap<>();
        devices.put("rf-bipolar-pullback", BipolarCatheter.from(number));
        for (int cm : ELEMENTS_CM) {
            devices.put("rf-segmental-" + cm + "cm", ContactElement.from(number, cm));
        }
        for (int nm : WAVELENGTHS_NM) {
            LaserLight light = LaserLight.from(number, nm);
            for (LaserFibre.Tip tip : LaserFibre.Tip.values()) {
                devices.put("laser-" + nm + "-" + tip.id(), LaserFibre.from(number, laser, light, tip));
            }
        }
        devices.put("microwave", MicrowaveAntenna.from(number));
        devices.put("steam", SteamCatheter.from(number));
        return devices;
    }

    /** Ids of the devices, in a fixed order. */
    Set<String> deviceIds() {
        return Collections.unmodifiableSet(devices.keySet());
    }

    /** @throws IllegalArgumentException for an id that is not a heat device */
    HeatDevice device(String id) {
        HeatDevice device = devices.get(id);
        if (device == null) {
            throw new IllegalArgumentException("deviceId must be one of " + devices.keySet() + ", got " + id);
        }
        return device;
    }

    TissueConstants tissue() {
        return tissue;
    }

    Validity validity() {
        return validity;
    }

    LaserCommon laser() {
        return laser;
    }
}
