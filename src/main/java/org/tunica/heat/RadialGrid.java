package org.tunica.heat;

import java.util.Arrays;

/**
 * Concentric shells around the device: film, wall, tumescent layer, fat. Lengths in m, volumes in m3 per m of vein.
 *
 * <p>Film and wall are cut evenly. Outside the wall the shells grow by a fixed factor; those of one layer are scaled
 * together so that a face falls exactly on its border. The logarithms of the exact steady shell conductance are kept.
 */
final class RadialGrid {
    private static final double WIDEST_M = 2e-3;
    private static final double M_PER_MM = 1e-3;

    final int filmCells;
    final int wallEnd;
    final int tumescentEnd;
    final int cells;
    final double[] faceM;
    final double[] centreM;
    final double[] widthM;
    final double[] volumeM2;
    final double[] lnInner;
    final double[] lnOuter;

    /**
     * Shells between given faces.
     *
     * @param filmCells shells of film
     * @param wallEnd first shell beyond the wall
     * @param tumescentEnd first shell of fat
     */
    RadialGrid(double[] faces, int filmCells, int wallEnd, int tumescentEnd) {
        this.filmCells = filmCells;
        this.wallEnd = wallEnd;
        this.tumescentEnd = tumescentEnd;
        faceM = faces;
        cells = faces.length - 1;
        centreM = new double[cells];
        widthM = new double[cells];
        volumeM2 = new double[cells];
        lnInner = new double[cells];
        lnOuter = new double[cells];
        for (int i = 0; i < cells; i++) {
            centreM[i] = (faces[i] + faces[i + 1]) / 2;
            widthM[i] = faces[i + 1] - faces[i];
            volumeM2[i] = 2 * Math.PI * centreM[i] * widthM[i];
            lnInner[i] = Math.log(centreM[i] / faces[i]);
            lnOuter[i] = Math.log(faces[i + 1] / centreM[i]);
        }
    }

    /**
     * The shells of a vein on a device.
     *
     * @throws IllegalArgumentException when the layers do not fit inside the outer radius
     */
    static RadialGrid of(
            double deviceMm, double filmMm, double wallMm, double tumescentMm, double outerMm, Fineness fine) {
        double borderMm = deviceMm + filmMm + wallMm + tumescentMm;
        if (borderMm >= outerMm) {
            throw new IllegalArgumentException("tumescentMm must end inside " + outerMm + " mm, got " + tumescentMm);
        }
        Faces faces = new Faces(deviceMm * M_PER_MM);
        faces.even(filmMm * M_PER_MM, fine.filmCells());
        int wallEnd = faces.even(wallMm * M_PER_MM, fine.wallCells());
        int tumescentEnd = faces.growing(borderMm * M_PER_MM, fine.growth());
        faces.growing(outerMm * M_PER_MM, fine.growth());
        return new RadialGrid(faces.taken(), fine.filmCells(), wallEnd, tumescentEnd);
    }

    /** Faces laid from the inside outwards. */
    private static final class Faces {
        private double[] atM = new double[128];
        private int count;
        private double lastWidthM;

        Faces(double innerM) {
            atM[count++] = innerM;
        }

        int even(double thicknessM, int cells) {
            double startM = atM[count - 1];
            for (int i = 1; i <= cells; i++) {
                add(startM + thicknessM * i / cells);
            }
            lastWidthM = thicknessM / cells;
            return count - 1;
        }

        int growing(double endM, double growth) {
            double startM = atM[count - 1];
            double thicknessM = endM - startM;
            if (thicknessM <= 0) {
                return count - 1;
            }
            int first = count;
            double reachedM = 0;
            while (reachedM < thicknessM) {
                lastWidthM = Math.min(lastWidthM * growth, WIDEST_M);
                reachedM += lastWidthM;
                add(reachedM);
            }
            for (int i = first; i < count; i++) {
                atM[i] = startM + atM[i] * thicknessM / reachedM;
            }
            return count - 1;
        }

        private void add(double faceM) {
            if (count == atM.length) {
                atM = Arrays.copyOf(atM, 2 * count);
            }
            atM[count++] = faceM;
        }

        double[] taken() {
            return Arrays.copyOf(atM, count);
        }
    }
}
