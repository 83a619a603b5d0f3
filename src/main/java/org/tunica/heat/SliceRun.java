package org.tunica.heat;

import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** One thread's runs of slices: lays the grid, drives the kernel through time, reads the result. */
final class SliceRun {
    /** The book closes to rounding; a larger gap means a fault of this program. */
    private static final double BOOK_CLOSES = 1e-9;

    private final HeatConstants constants;
    private final Fineness fineness;
    private final Bioheat kernel = new Bioheat();
    private final DeathTally tally;
    private Optional<Probe> nerve = Optional.empty();
    private Optional<Probe> skin = Optional.empty();

    SliceRun(HeatConstants constants, RateTables rates, Fineness fineness) {
        this.constants = constants;
        this.fineness = fineness;
        TissueConstants tissue = constants.tissue();
        tally = new DeathTally(
                rates.necrosis(),
                rates.delayed(),
                tissue.damageFloorC(),
                constants.laser().charC());
    }

    HeatRun run(HeatDevice device, HeatSetting setting, VeinSlice slice, Contact contact) {
        TissueConstants tissue = constants.tissue();
        RadialGrid grid = RadialGrid.of(
                device.radiusMm(),
                filmMm(device, slice, contact),
                slice.wallMm(),
                slice.tumescentMm(),
                tissue.outerRadiusMm(),
                fineness);
        Medium medium = new Medium(grid, tissue, slice.tumescentC());
        HeatSupply supply = device.supply(setting, grid, optics(slice, contact));
        pass(supply, grid, medium, slice);
        for (int rerun = 0; rerun < fineness.steamReruns(); rerun++) {
            Optional<HeatSupply> again = supply.withSteam(kernel.steamJPerM());
            if (again.isEmpty()) {
                break;
            }
            supply = again.get();
            pass(supply, grid, medium, slice);
        }
        return read(device, setting, slice);
    }

    private double filmMm(HeatDevice device, VeinSlice slice, Contact contact) {
        return contact == Contact.NEAR_SIDE
                ? constants.laser().nearFilmMm()
                : slice.filmMm().orElse(device.filmMm());
    }

    private HeatDevice.SliceOptics optics(VeinSlice slice, Contact contact) {
        return new HeatDevice.SliceOptics(
                slice.bloodFraction(), constants.laser().powerFactor(contact), fineness.steamReruns());
    }

    private void pass(HeatSupply supply, RadialGrid grid, Medium medium, VeinSlice slice) {
        kernel.begin(grid, medium);
        tally.begin(grid);
        nerve = probe(grid, slice.nerveGapMm());
        skin = probe(grid, slice.skinGapMm());
        TimeSteps steps = new TimeSteps(supply, fineness.stepFactor());
        while (steps.more() && !cool(steps)) {
            double stepS = steps.lengthS();
            kernel.rest();
            if (steps.sourceOn()) {
                supply.heat(steps.reachedS() + stepS / 2, kernel);
            }
            kernel.step(stepS);
            tally.after(stepS, kernel);
            if (nerve.isPresent()) {
                nerve.get().after(stepS, kernel);
            }
            if (skin.isPresent()) {
                skin.get().after(stepS, kernel);
            }
            steps.advance(stepS);
        }
    }

    /** Nothing is left that adds to death or dose. */
    private boolean cool(TimeSteps steps) {
        return fineness.untilCool()
                && !steps.sourceOn()
                && kernel.colderThan(constants.tissue().dose().floorC());
    }

    private Optional<Probe> probe(RadialGrid grid, OptionalDouble gapMm) {
        if (gapMm.isEmpty()) {
            return Optional.empty();
        }
        double radiusM = grid.faceM[grid.wallEnd] + Si.m(gapMm.getAsDouble());
        Probe probe = new Probe(grid, radiusM, constants.tissue().dose());
        probe.look(kernel);
        return Optional.of(probe);
    }

    private HeatRun read(HeatDevice device, HeatSetting setting, VeinSlice slice) {
        EnergyBook book = kernel.book();
        if (!(book.imbalance() <= BOOK_CLOSES)) {
            throw new IllegalStateException(
                    "energy book open by " + book.imbalance() + " for " + setting + " in " + slice);
        }
        TissueConstants tissue = constants.tissue();
        double dryMm = driedMm(slice.wallMm());
        double innerDryness = driedMm(tissue.charLayerMm()) / tissue.charLayerMm();
        double charIndex = Math.max(innerDryness / device.charDryness(), device.charLayerIndex(tally));
        return new HeatRun(
                setting,
                slice.wallMm(),
                Si.mm(tally.necrosisDepthM()),
                Si.mm(tally.delayedDepthM()),
                dryMm,
                innerDryness,
                charIndex,
                dryMm / slice.wallMm() / tissue.perforationDryShare(),
                tally.innerWallPeakC(),
                tally.outerWallPeakC(),
                nerve.map(probe -> probe.result(slice.nerveGapMm().orElseThrow())),
                skin.map(probe -> probe.result(slice.skinGapMm().orElseThrow())),
                book,
                flags(device, setting, slice, charIndex));
    }

    /** Thickness dried in the inner part of the wall up to a depth. */
    private double driedMm(double upToMm) {
        RadialGrid grid = kernel.grid();
        double dried = 0;
        double reachedMm = 0;
        for (int i = grid.filmCells; i < grid.wallEnd; i++) {
            double widthMm = Si.mm(grid.widthM[i]);
            dried += (1 - kernel.wetness()[i]) * Math.max(0, Math.min(widthMm, upToMm - reachedMm));
            reachedMm += widthMm;
        }
        return dried;
    }

    private Set<HeatFlag> flags(HeatDevice device, HeatSetting setting, VeinSlice slice, double charIndex) {
        Set<HeatFlag> flags = EnumSet.noneOf(HeatFlag.class);
        if (!device.calibrated()) {
            flags.add(HeatFlag.NOT_CALIBRATED);
        } else if (!device.tried(setting)) {
            flags.add(HeatFlag.OUTSIDE_CALIBRATION);
        }
        if (slice.bloodFraction().isPresent()) {
            flags.add(HeatFlag.BLOOD_NOT_AS_USUAL);
        }
        if (slice.filmMm().isPresent()) {
            flags.add(HeatFlag.FILM_NOT_AS_USUAL);
        }
        if (setting instanceof HeatSetting.Pulled pulled
                && peclet(device, pulled) < constants.validity().leastPeclet()) {
            flags.add(HeatFlag.AXIAL_CONDUCTION);
        }
        if (charIndex >= 1) {
            flags.add(HeatFlag.CHARRING);
        }
        return flags;
    }

    /** Heat carried past the slice over heat conducted along the vein: v L rc / k of the wall. */
    private double peclet(HeatDevice device, HeatSetting.Pulled pulled) {
        TissueConstants.Layer wall = constants.tissue().wall();
        return Si.mPerS(pulled.pullbackSPerCm())
                * Si.m(device.heatedMm())
                * wall.heatCapacityJPerM3K()
                / wall.conductivityWPerMK();
    }
}
