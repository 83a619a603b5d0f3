package org.tunica.anonymity;

import java.util.ArrayList;
import java.util.List;

/**
 * One rung of each ladder.
 *
 * @param rungs in the order of the ladders
 */
public record Recoding(List<Integer> rungs) {
    public Recoding {
        rungs = List.copyOf(rungs);
    }

    /** Every ladder on its first rung: nothing is made coarser. */
    public static Recoding none(List<Ladder> ladders) {
        return new Recoding(ladders.stream().map(ladder -> 0).toList());
    }

    /** Every combination of rungs. */
    public static List<Recoding> all(List<Ladder> ladders) {
        List<List<Integer>> all = List.of(List.of());
        for (Ladder ladder : ladders) {
            List<List<Integer>> longer = new ArrayList<>();
            for (List<Integer> begun : all) {
                for (int rung = 0; rung <= ladder.top(); rung++) {
                    List<Integer> next = new ArrayList<>(begun);
                    next.add(rung);
                    longer.add(next);
                }
            }
            all = longer;
        }
        return all.stream().map(Recoding::new).toList();
    }

    /**
     * What is lost, 0 nothing to 1 everything: the mean over the ladders of how high up they stand. One minus the precision
     * of Sweeney, Int J Uncertain Fuzz 2002;10(5):571-588, from memory.
     */
    public double lossShare(List<Ladder> ladders) {
        double sum = 0;
        for (int i = 0; i < ladders.size(); i++) {
            int top = ladders.get(i).top();
            sum += top == 0 ? 0 : (double) rungs.get(i) / top;
        }
        return sum / ladders.size();
    }

    /** What it makes of the exact values. */
    List<String> of(List<Ladder> ladders, List<String> known) {
        List<String> told = new ArrayList<>();
        for (int i = 0; i < ladders.size(); i++) {
            told.add(ladders.get(i).rungs().get(rungs.get(i)).of().apply(known.get(i)));
        }
        return told;
    }
}
