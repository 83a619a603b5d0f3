package org.tunica.treatment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.Room;
import org.tunica.casefile.UcumWords;
import org.tunica.knowledge.Knowledge;
import org.tunica.paper.Block;
import org.tunica.session.SessionDoses;
import org.tunica.session.SessionPlan;

/** Doses of the session, added up and held against their limits. A dose above a limit is told, never refused. */
final class DoseNote {
    private static final List<String> HEAD = List.of("Given", "Amount", "By weight", "At most", "Remark");

    private final Knowledge knowledge;
    private final SessionDoses limits;
    private final OptionalDouble weightKg;
    private final GivenDoses given;
    private final List<List<String>> rows = new ArrayList<>();
    private final List<String> warnings = new ArrayList<>();

    DoseNote(Knowledge knowledge, DeliveredSession session, OptionalDouble weightKg) {
        this.knowledge = knowledge;
        this.limits = new SessionDoses(knowledge);
        this.weightKg = weightKg;
        this.given = new GivenDoses(session);
        row("tumescence", given.tumescentMl(), "mL");
        lidocaine();
        polidocanol();
        tetradecyl();
        foam();
        row("adhesive", given.adhesiveMl(), "mL");
    }

    List<Block> blocks() {
        return rows.isEmpty()
                ? List.of(new Block.Paragraph("No drug and no fluid is recorded."))
                : List.of(new Block.Table(HEAD, rows));
    }

    /** What passed a limit, and what cannot be held against one. */
    List<String> warnings() {
        return List.copyOf(warnings);
    }

    /** All of it against the lines of tumescence with adrenaline, and the part without against the plain label. */
    private void lidocaine() {
        OptionalDouble all = given.lidocaineMg();
        OptionalDouble plain = given.plainLidocaineMg();
        if (!all.equals(plain) || all.isEmpty()) {
            byWeight("lidocaine", all, mgPerKg -> limits.lidocaine(mgPerKg, true, weightKg))
                    .filter(dose -> !dose.over())
                    .flatMap(dose -> dose.total().warning())
                    .ifPresent(words -> warnings.add("Lidocaine of the session: " + words + "."));
        }
        if (plain.isPresent()) {
            byWeight("lidocaine without adrenaline", plain, mgPerKg -> limits.lidocaine(mgPerKg, false, weightKg));
        }
        if (given.otherLidocaineMg().isPresent()) {
            byWeight(
                    "lidocaine outside the tumescence",
                    given.otherLidocaineMg(),
                    mgPerKg -> limits.lidocaineElsewhere(mgPerKg, given.otherAdrenaline(), weightKg));
        }
    }

    /** By mass whatever its form, and what was given as liquid by volume, too. */
    private void polidocanol() {
        byWeight("polidocanol", given.drugMg(Room.SclerosantDrug.POLIDOCANOL), limits::polidocanol);
        OptionalDouble liquid = given.polidocanolLiquidMl();
        if (liquid.isEmpty()) {
            unknown("polidocanol liquid");
        } else if (liquid.getAsDouble() > 0) {
            total(
                    "polidocanol liquid",
                    Rounded.text(liquid.getAsDouble()) + " mL",
                    "",
                    limits.polidocanolLiquid(liquid.getAsDouble()));
        }
    }

    private void foam() {
        OptionalDouble ml = given.foamMl();
        if (ml.isEmpty()) {
            unknown("foam");
        } else if (ml.getAsDouble() > 0) {
            total("foam", Rounded.text(ml.getAsDouble()) + " mL", "", limits.foam(ml.getAsDouble()));
        }
    }

    /** Its ceilings are volumes that depend on strength and form, so it is told as a share of them. */
    private void tetradecyl() {
        OptionalDouble mg = given.drugMg(Room.SclerosantDrug.SODIUM_TETRADECYL_SULPHATE);
        if (mg.isEmpty()) {
            unknown("sodium tetradecyl sulphate");
            return;
        }
        double share = given.sclerosants().stream()
                .filter(one -> one.drug()
                        .map(Room.SclerosantDrug.SODIUM_TETRADECYL_SULPHATE::equals)
                        .orElse(false))
                .mapToDouble(this::share)
                .sum();
        if (mg.getAsDouble() > 0) {
            total("sodium tetradecyl sulphate", Rounded.text(mg.getAsDouble()) + " mg", "", limits.tetradecyl(share));
        }
    }

    private double share(DeliveredSegment.Sclerosant one) {
        return GivenDoses.isFoam(one)
                ? limits.tetradecylFoamShare(one.foamMl().orElse(0))
                : limits.tetradecylLiquidShare(
                        one.liquidMl().orElse(0), one.percent().orElseThrow());
    }

    /** Holds a mass by weight against its limit. */
    private interface Held {
        SessionDoses.Held by(double mgPerKg);
    }

    private Optional<SessionDoses.Held> byWeight(String name, OptionalDouble mg, Held held) {
        if (mg.isEmpty()) {
            unknown(name);
        } else if (mg.getAsDouble() > 0 && weightKg.isEmpty()) {
            row(name, mg, "mg");
            warnings.add("The " + name + " cannot be held against its limit: the weight is not recorded.");
        } else if (mg.getAsDouble() > 0) {
            double mgPerKg = mg.getAsDouble() / weightKg.getAsDouble();
            SessionDoses.Held total = held.by(mgPerKg);
            total(name, Rounded.text(mg.getAsDouble()) + " mg", Rounded.text(mgPerKg) + " mg/kg", total);
            return Optional.of(total);
        }
        return Optional.empty();
    }

    private void row(String name, OptionalDouble amount, String unit) {
        if (amount.isPresent() && amount.getAsDouble() > 0) {
            rows.add(List.of(name, Rounded.text(amount.getAsDouble()) + " " + unit, "", "", ""));
        }
    }

    private void unknown(String name) {
        rows.add(List.of(name, Says.NOT_RECORDED, "", "", "a part of it is not recorded"));
        warnings.add("The " + name + " of the session cannot be added up: a part of it is not recorded.");
    }

    private void total(String name, String amount, String byWeight, SessionDoses.Held dose) {
        SessionPlan.Total total = dose.total();
        String most = Rounded.text(total.limit().orElseThrow()) + UcumWords.behind(total.unit());
        boolean over = dose.over();
        String id = total.limitId().orElseThrow();
        rows.add(List.of(
                name,
                amount,
                byWeight,
                total.unit().equals("1") ? Math.round(100 * total.amount()) + " % of its ceiling" : most,
                over ? "OVER THE LIMIT" : total.warning().orElse("within the limit")));
        if (over) {
            warnings.add("More " + name + " was given than the limit of a session allows: "
                    + (byWeight.isEmpty() ? amount : byWeight) + ", at most "
                    + (total.unit().equals("1") ? "its ceiling by strength and form" : most) + " ("
                    + knowledge.quantity(id).says() + ").");
        }
    }
}
