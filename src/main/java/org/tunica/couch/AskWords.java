package org.tunica.couch;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.tunica.casefile.Criterion;
import org.tunica.casefile.UcumWords;
import org.tunica.casefile.Word;
import org.tunica.couch.Ask.Choice;
import org.tunica.knowledge.GlossaryField;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Measurement;
import org.tunica.knowledge.Quantity;
import org.tunica.treatment.ClosureDefinition;
import org.tunica.wording.SettingWords;

/** The words of what the form asks: of knowledge/ where it has some, else of the form. */
final class AskWords {
    static final List<Choice> YES_NO = List.of(new Choice("true", "yes"), new Choice("false", "no"));

    /** What is filled in seldom; it is folded away until it is. */
    private static final Pattern RARE = Pattern.compile(".*SdMm|importance|room\\.costClasses\\..*"
            + "|limbs\\.(anklePressureMmHg|toePressureMmHg|trunkIsMainOutflow)|limbs\\.segments\\.chosen");

    /** Of what no rule asks under that name. */
    private static final Map<String, String> OWN = Map.ofEntries(
            Map.entry("caseRef", "name of the case here; no name of a person"),
            Map.entry("importance", "what matters most to this patient, in order"),
            Map.entry("room.devices", "devices of the room"),
            Map.entry("room.sclerosants", "sclerosants in stock"),
            Map.entry("room.sclerosants.drug", "drug"),
            Map.entry("room.tumescent.chilled", "whether the tumescent mix is chilled"),
            Map.entry("room.costClasses.low", "techniques that cost little here"),
            Map.entry("room.costClasses.middling", "techniques that cost neither little nor much here"),
            Map.entry("room.costClasses.high", "techniques that cost much here"),
            Map.entry("limbs.side", "side"),
            Map.entry("limbs.segments.ref", "name of the segment in the map"),
            Map.entry("limbs.segments.nerve.name", "nearest nerve"),
            Map.entry("delivered.date", "day, such as 2026-03-02"),
            Map.entry("delivered.people", "who took part, by initials; no name"),
            Map.entry("delivered.indication", "why it was done, in words; no name"),
            Map.entry("delivered.consent", "consent was confirmed"),
            Map.entry("delivered.timeOut", "the team stopped to check person, side and procedure"),
            Map.entry("delivered.otherAdrenaline", "that lidocaine held adrenaline"),
            Map.entry("delivered.aftercare.compression", "compression, in words"),
            Map.entry("delivered.aftercare.prophylaxis", "prophylaxis against thrombosis, in words"),
            Map.entry("delivered.aftercare.adviceGiven", "advice for the way home was given"),
            Map.entry("delivered.aftercare.followUp", "follow-up planned, in words"),
            Map.entry("delivered.segments.notDone", "not done, because; then what was intended is left out"),
            Map.entry("delivered.segments.technique", "technique really used"),
            Map.entry("delivered.segments.position", "position of the patient"),
            Map.entry("delivered.segments.access.vein", "vein entered"),
            Map.entry("delivered.segments.access.level", "level of access"),
            Map.entry("delivered.segments.stretches", "stretches each with its own setting, from the junction down"),
            Map.entry("delivered.segments.tumescent.adrenaline", "adrenaline in the tumescence"),
            Map.entry("delivered.segments.tumescent.chilled", "tumescence chilled"),
            Map.entry("delivered.segments.incidents", "what went wrong"),
            Map.entry("delivered.segments.incidentNote", "more about it, in words; no name"),
            Map.entry("delivered.segments.closingDuplex.deepVeinOpen", "deep vein seen open at the last scan"),
            Map.entry("followup.limbs.visits.ceap", "CEAP class at this visit, such as C2,As,Ep,Pr"),
            Map.entry("followup.limbs.treated.closure", "counts as closed by the definition"),
            Map.entry("followup.limbs.visits.segments.clot", "clot at the deep end"),
            Map.entry("followup.limbs.visits.segments.complications", "what went wrong since the last visit"),
            Map.entry("followup.limbs.visits.segments.complications.clavienDindo", "grade by Clavien and Dindo"),
            Map.entry("followup.limbs.visits.segments.again", "done to it again"),
            Map.entry("limbs.segments.chosen", "technique a person has chosen already"));

    private final Knowledge knowledge;

    AskWords(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    Ask ask(String prefix, String field, Ask.Kind kind, Collection<Choice> choices, boolean required, List<Ask> row) {
        String path = prefix + field;
        Optional<Measurement> number =
                Optional.ofNullable(knowledge.measurements().get(measured(path)));
        return new Ask(
                field,
                path,
                kind,
                capital(item(path).or(() -> number.map(Measurement::says)).orElseGet(() -> says(path))),
                number.map(one -> UcumWords.behind(one.range().unit()).strip()).orElse(""),
                number.map(AskWords::range).orElse(""),
                List.copyOf(choices),
                required,
                RARE.matcher(path).matches(),
                row);
    }

    /** A stretch holds what the whole length holds, and every item of the severity score is graded alike. */
    private static String measured(String path) {
        return path.replace("segments.stretches.", "segments.heat.")
                .replaceFirst("^followup\\..*vcss(Before)?\\..*", "followup.vcss");
    }

    /** The items of the severity score are measured alike, so only their own names tell them apart. */
    private static Optional<String> item(String path) {
        return path.matches("followup\\..*vcss(Before)?\\..*")
                ? Optional.of("severity score, " + spaced(path.substring(path.lastIndexOf('.') + 1)))
                : Optional.empty();
    }

    private static String range(Measurement number) {
        return SettingWords.plain(number.range().min()) + " to "
                + SettingWords.plain(number.range().max())
                + UcumWords.behind(number.range().unit());
    }

    private String says(String path) {
        String own = OWN.get(path);
        return own != null
                ? own
                : glossary(path)
                        .map(field -> field.noun().replaceFirst("^the ", ""))
                        .orElseGet(() -> spaced(path.substring(path.lastIndexOf('.') + 1)));
    }

    /** The glossary names objects inside others in one word, or by the last word alone. */
    private Optional<GlossaryField> glossary(String path) {
        String subject = path.replaceFirst("^limbs\\.segments\\.", "segment.").replaceFirst("^limbs\\.", "limb.");
        int dot = subject.indexOf('.');
        if (dot < 0) {
            return Optional.empty();
        }
        String of = subject.substring(0, dot + 1);
        String[] names = subject.substring(dot + 1).split("\\.");
        String joined = names[0]
                + String.join(
                        "", Arrays.stream(names).skip(1).map(AskWords::capital).toList());
        return Stream.of(of + joined, of + names[names.length - 1])
                .map(id -> knowledge.glossary().fields().get(id))
                .filter(field -> field != null)
                .findFirst();
    }

    /** A word of a closed list. */
    Choice choice(Word word) {
        if (word instanceof Criterion criterion) {
            return new Choice(word.word(), criterion.says());
        }
        String says = word.word().replace('-', ' ');
        return new Choice(word.word(), word instanceof ClosureDefinition closed ? says + means(closed) : says);
    }

    /** Trials differ in what they call closed, so whoever picks a definition sees its number. */
    private String means(ClosureDefinition closed) {
        Quantity limit = knowledge.quantity(closed.limitId());
        return ": " + limit.says() + ", " + SettingWords.plain(limit.value()) + UcumWords.behind(limit.unit());
    }

    /** The ids a list of that name may hold; empty where it holds a text. */
    Collection<Choice> ids(String field) {
        return switch (field.substring(field.lastIndexOf('.') + 1)) {
            case "devices", "low", "middling", "high", "chosen", "technique" ->
                knowledge.techniques().values().stream()
                        .map(technique -> new Choice(technique.id(), technique.says()))
                        .toList();
            case "allergies" -> choices(knowledge.allergies());
            case "conditions" -> choices(knowledge.conditions());
            default -> List.of();
        };
    }

    private static List<Choice> choices(Map<String, String> known) {
        return known.entrySet().stream()
                .map(entry -> new Choice(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private static String spaced(String name) {
        return name.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
    }
}
