package org.tunica.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.tunica.casefile.Word;
import org.tunica.knowledge.AcceptedRemark;
import org.tunica.knowledge.ChangeRecord;
import org.tunica.knowledge.Conflict;
import org.tunica.knowledge.Evidence;
import org.tunica.knowledge.Glossary;
import org.tunica.knowledge.GlossaryField;
import org.tunica.knowledge.Hazard;
import org.tunica.knowledge.IntendedUse;
import org.tunica.knowledge.Measurement;
import org.tunica.knowledge.PlainFigure;
import org.tunica.knowledge.PlainWay;
import org.tunica.knowledge.Provenance;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.SettingRange;
import org.tunica.knowledge.Source;
import org.tunica.knowledge.Statement;
import org.tunica.knowledge.Technique;
import org.tunica.rules.Condition;
import org.tunica.rules.Rule;

/** Everything a rule, a number or another entry says, aspect by aspect; where it stands is none of it. */
final class Aspects {
    private final Map<String, List<String>> all = new LinkedHashMap<>();

    private Aspects() {}

    static Aspects of(Rule rule) {
        return new Aspects()
                .one("sentence", rule.title())
                .list("condition", rule.conditions().stream().map(Condition::sentence))
                .one("conclusion", rule.conclusion().sentence())
                .one("reason", rule.because())
                .list("source", rule.sources().stream())
                .one("standing", rule.standing().word())
                .one("class", rule.ruleClass())
                .one("review by", rule.reviewBy().toString())
                .list("hazard", rule.hazards().stream())
                .one("change record", rule.change());
    }

    static Aspects of(Quantity quantity) {
        return new Aspects()
                .one("value", Figures.with(quantity.value(), quantity.unit()))
                .one("range", Figures.range(quantity.low(), quantity.high(), quantity.unit()))
                .one("unit", quantity.unit())
                .one("meaning", quantity.says())
                .provenance("", quantity.provenance());
    }

    static Aspects of(Technique technique) {
        Aspects aspects = new Aspects()
                .one("name", technique.says())
                .one("family", technique.family().word())
                .list("need", technique.needs().stream())
                .list("drug", technique.drugs().stream())
                .maybe("generator", technique.generator())
                .maybe("note", technique.note());
        technique
                .quantities()
                .forEach((key, quantity) ->
                        of(quantity).all.forEach((aspect, texts) -> aspects.list(key + " " + aspect, texts.stream())));
        technique.settings().values().forEach(aspects::setting);
        return aspects;
    }

    private void setting(SettingRange range) {
        String about = "setting " + range.setting() + " ";
        one(about + "range", Figures.range(range.low(), range.high(), range.unit()));
        one(about + "typical", Figures.range(range.typical(), range.typical(), range.unit()));
        provenance(about, range.provenance());
    }

    static Aspects of(Measurement measurement) {
        String unit = measurement.range().unit();
        return new Aspects()
                .one("meaning", measurement.says())
                .one(
                        "range",
                        Figures.range(
                                OptionalDouble.of(measurement.range().min()),
                                OptionalDouble.of(measurement.range().max()),
                                unit))
                .one("usual error", Figures.range(OptionalDouble.empty(), measurement.sd(), unit))
                .provenance("", measurement.provenance());
    }

    static Aspects of(GlossaryField field) {
        return new Aspects()
                .one("kind", field.kind().word())
                .one("name", field.name())
                .one("verb", field.verb())
                .one("denying verb", field.verbNot())
                .one("noun", field.noun())
                .one("sentence for yes", field.yes())
                .one("sentence for no", field.no())
                .maybe("unit", field.unit())
                .list("word", field.values().stream());
    }

    static Aspects of(Glossary.SettingName setting) {
        return new Aspects().one("name", setting.name()).one("unit", setting.unit());
    }

    static Aspects of(Source source) {
        return new Aspects()
                .one("citation", source.cites())
                .maybe("doi", source.doi())
                .one(
                        "year",
                        source.year().isPresent() ? String.valueOf(source.year().getAsInt()) : "")
                .one("read", source.read().word())
                .one("about", source.about());
    }

    static Aspects of(ChangeRecord change) {
        return new Aspects()
                .one("title", change.title())
                .one("status", change.status().word())
                .list("author", people(change.authors()))
                .list("reviewer", people(change.reviewers()))
                .list("approver", people(change.approvers()))
                .one("reason", change.reason())
                .list("source", change.sources().stream())
                .list("rule", change.rules().stream())
                .list("limit", change.limits().stream())
                .one("effective", change.effective().toString())
                .list("replaces", change.replaces().stream())
                .list("retires", change.retires().stream());
    }

    static Aspects of(Hazard hazard) {
        return new Aspects()
                .one("hazard", hazard.hazard())
                .one("cause", hazard.cause())
                .one("effect", hazard.effect())
                .maybe("held by", hazard.held())
                .one("limits", hazard.limits());
    }

    static Aspects of(IntendedUse use) {
        return new Aspects()
                .one("purpose", use.says())
                .list("user", use.users().stream())
                .list("use", use.uses().stream())
                .list("not for", use.notFor().stream())
                .list("limit", use.limits().stream());
    }

    static Aspects of(Conflict conflict) {
        return new Aspects()
                .one("question", conflict.question())
                .list("value", conflict.values().stream())
                .list("step", conflict.steps().stream().map(EvidenceTables::step))
                .one("why", conflict.why())
                .maybe("left", conflict.left());
    }

    static Aspects of(AcceptedRemark accepted) {
        return new Aspects()
                .one("remark", accepted.remark())
                .list("rule", accepted.rules().stream())
                .one("why", accepted.why());
    }

    static Aspects of(Statement principle) {
        return new Aspects()
                .one("words", principle.says())
                .one("source", principle.source())
                .one("standing", principle.standing().word())
                .one("change record", principle.change());
    }

    static Aspects of(PlainWay way) {
        return new Aspects()
                .one("name", way.name())
                .list("technique", way.techniques().stream())
                .list("what", way.what().stream())
                .list("before", way.before().stream())
                .list("needles", way.needles().stream())
                .list("position", way.position().stream())
                .list("time", way.time().stream())
                .list("after", way.after().stream())
                .list("may", way.may().says().stream())
                .one("source of may", way.may().source())
                .one("standing of may", way.may().standing().word())
                .one("source", way.source())
                .one("standing", way.standing().word())
                .one("change record", way.change());
    }

    static Aspects of(PlainFigure figure) {
        return new Aspects()
                .one("kind", figure.kind().word())
                .list("way", figure.ways().stream())
                .list("technique", figure.techniques().stream())
                .list("vein", figure.veins().stream().map(Word::word).sorted())
                .one("words", figure.says())
                .one("rate", Figures.range(figure.percent(), figure.percent(), "%"))
                .one("range", Figures.range(figure.low(), figure.high(), "%"))
                .maybe("horizon", figure.horizon())
                .one("among", figure.among().word())
                .one("definition", figure.definition())
                .one("row", figure.row())
                .one("source", figure.source())
                .one("standing", figure.standing().word())
                .one("change record", figure.change());
    }

    static Aspects of(Evidence evidence) {
        return new Aspects()
                .one("statement", evidence.says())
                .list("source", evidence.sources().stream())
                .one("known by", evidence.tag().word())
                .list("rule", evidence.rules().stream())
                .list("number", evidence.limits().stream())
                .maybe("left", evidence.left());
    }

    static Aspects of(String words) {
        return new Aspects().one("words", words);
    }

    private static Stream<String> people(List<ChangeRecord.Person> people) {
        return people.stream().map(person -> person.initials() + ", " + person.role());
    }

    /** What is not the same here and in what became of it, in a fixed order. */
    List<Difference.Detail> changedTo(Aspects after) {
        List<String> names = new ArrayList<>(all.keySet());
        after.all.keySet().stream().filter(name -> !names.contains(name)).forEach(names::add);
        List<Difference.Detail> details = new ArrayList<>();
        for (String name : names) {
            details.addAll(details(name, all.getOrDefault(name, List.of()), after.all.getOrDefault(name, List.of())));
        }
        return details;
    }

    /** One text that became another is told as one change; of a list each loss and each gain. */
    private static List<Difference.Detail> details(String aspect, List<String> before, List<String> after) {
        List<String> lost = new ArrayList<>(before);
        lost.removeAll(after);
        List<String> gained = new ArrayList<>(after);
        gained.removeAll(before);
        if (lost.size() == 1 && gained.size() == 1) {
            return List.of(new Difference.Detail(aspect, lost.get(0), gained.get(0)));
        }
        List<Difference.Detail> details = new ArrayList<>();
        lost.forEach(text -> details.add(new Difference.Detail(aspect, text, "")));
        gained.forEach(text -> details.add(new Difference.Detail(aspect, "", text)));
        return details;
    }

    private Aspects provenance(String about, Provenance provenance) {
        return one(about + "source", provenance.source())
                .one(about + "standing", provenance.standing().word())
                .one(about + "since", provenance.since().toString())
                .one(about + "change record", provenance.change())
                .maybe(about + "note", provenance.note());
    }

    private Aspects one(String aspect, String text) {
        return list(aspect, text.isEmpty() ? Stream.empty() : Stream.of(text));
    }

    private Aspects maybe(String aspect, Optional<String> text) {
        return list(aspect, text.stream());
    }

    private Aspects list(String aspect, Stream<String> texts) {
        all.put(aspect, texts.toList());
        return this;
    }
}
