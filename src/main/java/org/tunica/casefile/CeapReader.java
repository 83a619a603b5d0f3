package org.tunica.casefile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads one leg in the notation of CEAP 2020 and notes every fault. A capital opens a part; what follows belongs to it. */
final class CeapReader {
    private static final int LONGEST = 200;
    private static final Pattern TOKEN = Pattern.compile("([CEAP]?)([a-z0-9]+)(?:\\(([^()]*)\\))?");
    private static final Pattern CLINICAL = Pattern.compile("(0|1|2r?|3|4[abc]|5|6r?)?([sa]?)");

    private final String place;
    private final Faults faults;
    private final Set<Limb.CeapClass> clinical = EnumSet.noneOf(Limb.CeapClass.class);
    private final Set<Ceap.Symptoms> symptoms = EnumSet.noneOf(Ceap.Symptoms.class);
    private final Set<Ceap.Cause> causes = EnumSet.noneOf(Ceap.Cause.class);
    private final Map<Ceap.Site, Set<NamedVein>> anatomy = new EnumMap<>(Ceap.Site.class);
    private final Set<Ceap.Flow> flow = EnumSet.noneOf(Ceap.Flow.class);
    private String part = "";

    CeapReader(String place, Faults faults) {
        this.place = place;
        this.faults = faults;
    }

    Optional<Ceap> read(String text) {
        int before = faults.count();
        if (text.length() > LONGEST) {
            fault("is " + text.length() + " signs long; at most " + LONGEST + " are read");
            return Optional.empty();
        }
        // a comma inside brackets parts veins, not tokens
        for (String token : text.replaceAll("\\s", "").split(",(?![^()]*\\))", -1)) {
            token(token);
        }
        together();
        return faults.count() > before
                ? Optional.empty()
                : Optional.of(new Ceap(clinical, symptoms.stream().findFirst(), causes, anatomy, flow));
    }

    private void token(String written) {
        Matcher token = TOKEN.matcher(written);
        if (!token.matches()) {
            fault("\"" + FieldReader.shorten(written) + "\" is no part of a CEAP notation such as C2s,Ep,As(GSVa),Pr");
            return;
        }
        open(token.group(1));
        Optional<String> veins = Optional.ofNullable(token.group(3));
        String code = token.group(2);
        if (veins.isPresent() && !part.equals("A")) {
            fault("veins in brackets belong behind A, not behind \"" + part + code + "\"");
        }
        switch (part) {
            case "C" -> clinical(code);
            case "E" ->
                Ceap.Code.of(Ceap.Cause.class, code)
                        .ifPresentOrElse(
                                cause -> once(causes, cause, "E" + code), () -> unknown("E", code, Ceap.Cause.class));
            case "A" ->
                Ceap.Code.of(Ceap.Site.class, code)
                        .ifPresentOrElse(site -> site(site, veins), () -> unknown("A", code, Ceap.Site.class));
            case "P" ->
                Ceap.Code.of(Ceap.Flow.class, code)
                        .ifPresentOrElse(one -> once(flow, one, "P" + code), () -> unknown("P", code, Ceap.Flow.class));
            default -> fault("must start with C and a clinical class");
        }
    }

    private void open(String letter) {
        if (letter.isEmpty()) {
            return;
        }
        if ("CEAP".indexOf(letter) < "CEAP".indexOf(part)) {
            fault("the parts stand in the order C, E, A, P; " + letter + " comes after " + part);
        } else if (letter.equals(part) && !part.equals("C")) {
            fault(letter + " stands twice; write further letters behind a comma");
        }
        part = letter;
    }

    private void clinical(String code) {
        Matcher matcher = CLINICAL.matcher(code);
        if (!matcher.matches()) {
            fault("\"C" + FieldReader.shorten(code) + "\" is no clinical class; known: " + String.join(", ", words())
                    + ", each with s or a");
            return;
        }
        Optional.ofNullable(matcher.group(1))
                .ifPresent(
                        number -> once(clinical, Limb.CeapClass.values()[words().indexOf("C" + number)], "C" + number));
        Ceap.Code.of(Ceap.Symptoms.class, matcher.group(2)).ifPresent(symptoms::add);
    }

    private void site(Ceap.Site site, Optional<String> veins) {
        Set<NamedVein> named = EnumSet.noneOf(NamedVein.class);
        if (anatomy.putIfAbsent(site, named) != null) {
            fault("A" + site.code() + " stands twice");
        }
        veins.ifPresent(list -> Arrays.stream(list.split(",", -1)).forEach(label -> vein(site, label, named)));
    }

    private void vein(Ceap.Site site, String label, Set<NamedVein> named) {
        Optional<NamedVein> vein = Ceap.Code.of(NamedVein.class, label);
        if (vein.isEmpty()) {
            List<String> known = Ceap.Code.all(NamedVein.class);
            fault("\"" + FieldReader.shorten(label) + "\" names no vein" + Nearest.hint(label, known));
        } else if (vein.get().site() != site) {
            fault(label + " is not one of the veins of A" + site.code() + " but of A"
                    + vein.get().site().code());
        } else {
            once(named, vein.get(), label);
        }
    }

    private <T> void once(Collection<T> all, T one, String written) {
        if (!all.add(one)) {
            fault(written + " stands twice");
        }
    }

    private <E extends Enum<E> & Ceap.Code> void unknown(String letter, String code, Class<E> type) {
        fault("\"" + letter + FieldReader.shorten(code) + "\" is not known; known behind " + letter + ": "
                + String.join(", ", Ceap.Code.all(type)));
    }

    /** What cannot stand together. */
    private void together() {
        if (clinical.isEmpty() && faults.none()) {
            fault("must name a clinical class");
        }
        if (clinical.contains(Limb.CeapClass.C0) && clinical.size() > 1) {
            fault("C0 means no visible sign and stands alone");
        }
        if (symptoms.size() > 1) {
            fault("a leg is either s (symptomatic) or a (asymptomatic)");
        }
        alone("En", causes.contains(Ceap.Cause.NONE_FOUND), causes);
        alone("An", anatomy.containsKey(Ceap.Site.NONE_FOUND), anatomy.keySet());
        alone("Pn", flow.contains(Ceap.Flow.NONE_FOUND), flow);
    }

    private void alone(String code, boolean none, Set<?> all) {
        if (none && all.size() > 1) {
            fault(code + " means none found and stands alone");
        }
    }

    private void fault(String says) {
        faults.add(place, says);
    }

    private static List<String> words() {
        List<String> words = new ArrayList<>();
        for (Limb.CeapClass one : Limb.CeapClass.values()) {
            words.add(one.word());
        }
        return words;
    }
}
