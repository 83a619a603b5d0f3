package org.tunica.review;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Looks for facts that meet demands, or shows that there are none: cells are ruled out as far as they follow, then one
 * open choice is tried after the other. Exact, because variables and cells are finite.
 */
final class Search {
    private final Map<String, BitSet> own;
    private final List<Map<String, BitSet>> others;
    private final List<Demand.Fits> everywhere;

    private Search(Map<String, BitSet> own, List<Map<String, BitSet>> others, List<Demand.Fits> everywhere) {
        this.own = own;
        this.others = others;
        this.everywhere = everywhere;
    }

    /** The cells that remain for each variable when all demands are met; empty when they cannot be. */
    static Optional<Found> find(Collection<? extends Demand> demands) {
        return new Search(new HashMap<>(), new ArrayList<>(), new ArrayList<>())
                .meet(demands)
                .map(search -> new Found(search.own, search.others));
    }

    private Optional<Search> meet(Collection<? extends Demand> demands) {
        Deque<Demand> todo = new ArrayDeque<>(demands);
        List<Demand.Any> choices = new ArrayList<>();
        while (!todo.isEmpty()) {
            if (!takeAll(todo, choices) || !reduce(choices, todo)) {
                return Optional.empty();
            }
        }
        return choices.isEmpty() ? Optional.of(this) : branch(choices);
    }

    private Optional<Search> branch(List<Demand.Any> choices) {
        Demand.Any fewest = choices.stream()
                .min(Comparator.comparingInt(choice -> choice.parts().size()))
                .orElseThrow();
        for (Demand part : fewest.parts()) {
            List<Demand> next = new ArrayList<>(choices);
            next.remove(fewest);
            next.add(part);
            Optional<Search> met = copy().meet(next);
            if (met.isPresent()) {
                return met;
            }
        }
        return Optional.empty();
    }

    private boolean takeAll(Deque<Demand> todo, List<Demand.Any> choices) {
        while (!todo.isEmpty()) {
            Demand demand = todo.pop();
            if (demand instanceof Demand.Any any) {
                choices.add(any);
            } else if (demand instanceof Demand.All all) {
                todo.addAll(all.parts());
            } else if (!take(demand)) {
                return false;
            }
        }
        return true;
    }

    /** Drops what is met or cannot be met; what is left without alternative becomes a demand. */
    private boolean reduce(List<Demand.Any> choices, Deque<Demand> todo) {
        List<Demand.Any> left = new ArrayList<>();
        for (Demand.Any any : choices) {
            if (met(any)) {
                continue;
            }
            List<? extends Demand> open =
                    any.parts().stream().filter(this::possible).toList();
            if (open.isEmpty()) {
                return false;
            }
            if (open.size() == 1) {
                todo.add(open.get(0));
            } else {
                left.add(new Demand.Any(open));
            }
        }
        choices.clear();
        choices.addAll(left);
        return true;
    }

    private boolean take(Demand demand) {
        if (demand instanceof Demand.Fits fits) {
            return narrow(own, fits);
        }
        if (demand instanceof Demand.Everywhere every) {
            everywhere.add(every.fits());
            return others.stream().allMatch(other -> narrow(other, every.fits()));
        }
        Map<String, BitSet> other = new HashMap<>();
        others.add(other);
        return everywhere.stream().allMatch(fits -> narrow(other, fits))
                && narrow(other, ((Demand.Somewhere) demand).fits());
    }

    private static boolean narrow(Map<String, BitSet> cells, Demand.Fits fits) {
        BitSet left = (BitSet) fits.cells().clone();
        BitSet before = cells.get(fits.variable().id());
        if (before != null) {
            left.and(before);
        }
        cells.put(fits.variable().id(), left);
        return !left.isEmpty();
    }

    private boolean met(Demand demand) {
        if (demand instanceof Demand.Fits fits) {
            return inside(own, fits);
        }
        if (demand instanceof Demand.All all) {
            return all.parts().stream().allMatch(this::met);
        }
        if (demand instanceof Demand.Any any) {
            return any.parts().stream().anyMatch(this::met);
        }
        return demand instanceof Demand.Somewhere some && others.stream().anyMatch(other -> inside(other, some.fits()));
    }

    private static boolean inside(Map<String, BitSet> cells, Demand.Fits fits) {
        BitSet outside = (BitSet)
                cells.getOrDefault(fits.variable().id(), all(fits.variable())).clone();
        outside.andNot(fits.cells());
        return outside.isEmpty();
    }

    private static BitSet all(Variable variable) {
        BitSet all = new BitSet();
        all.set(0, variable.cells().size());
        return all;
    }

    private boolean possible(Demand demand) {
        if (demand instanceof Demand.Fits fits) {
            return meets(own, fits);
        }
        if (demand instanceof Demand.All all) {
            return all.parts().stream().allMatch(this::possible);
        }
        if (demand instanceof Demand.Any any) {
            return any.parts().stream().anyMatch(this::possible);
        }
        if (demand instanceof Demand.Everywhere every) {
            return others.stream().allMatch(other -> meets(other, every.fits()));
        }
        return !((Demand.Somewhere) demand).fits().cells().isEmpty();
    }

    private static boolean meets(Map<String, BitSet> cells, Demand.Fits fits) {
        BitSet before = cells.get(fits.variable().id());
        return before == null ? !fits.cells().isEmpty() : before.intersects(fits.cells());
    }

    private Search copy() {
        List<Map<String, BitSet>> copies = new ArrayList<>();
        others.forEach(other -> copies.add(new HashMap<>(other)));
        return new Search(new HashMap<>(own), copies, new ArrayList<>(everywhere));
    }

    /**
     * Where facts lie that meet the demands.
     *
     * @param own the cells left of each variable that matters, by its id
     * @param others the same for each other segment of the leg
     */
    record Found(Map<String, BitSet> own, List<Map<String, BitSet>> others) {}
}
