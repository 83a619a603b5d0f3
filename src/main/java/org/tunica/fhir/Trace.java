package org.tunica.fhir;

import java.util.List;
import java.util.Optional;
import org.tunica.Tunica;
import org.tunica.casefile.Sha256;
import org.tunica.plan.Advice;
import org.tunica.plan.AdviceSoFar;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.SegmentAdvice;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What a program needs to check a card: release, every option with its standing and rules, what is awaited, what was not used. */
final class Trace {
    private final Translated read;
    private final AdviceSoFar soFar;
    private final Advice advice;
    /** The same advice has the same one, whatever the card is called. */
    private final String fingerprint;

    Trace(Tunica tunica, Translated read, AdviceSoFar soFar) {
        this.read = read;
        this.soFar = soFar;
        this.advice = soFar.advice();
        this.fingerprint = Sha256.of(tunica.toJson(advice));
    }

    ObjectNode of(List<SegmentAdvice> segments) {
        ObjectNode trace = JsonNodeFactory.instance.objectNode();
        trace.put("fingerprint", fingerprint).put("seed", advice.seed());
        trace.put("computed", soFar.isWhole() ? "whole" : "in-part");
        trace.putObject("release")
                .put("version", advice.release().version())
                .put("state", advice.release().state().word())
                .put("digest", advice.release().digest());
        ArrayNode list = trace.putArray("segments");
        segments.forEach(segment -> segment(list.addObject(), segment));
        ArrayNode unused = trace.putArray("unused");
        read.unused()
                .forEach(one -> unused.addObject()
                        .put("resource", one.resource())
                        .put("path", one.path())
                        .put("reason", one.reason()));
        ArrayNode ages = trace.putArray("recorded");
        read.ages().stream()
                .filter(age -> !age.when().isEmpty())
                .forEach(age -> ages.addObject().put("path", age.path()).put("when", age.when()));
        return trace;
    }

    /** The same of one segment, with the option the card is about told apart. */
    ObjectNode of(SegmentAdvice segment, Optional<OptionAdvice> about) {
        ObjectNode trace = of(List.of(segment));
        about.ifPresent(option -> option(trace.putObject("about"), option));
        return trace;
    }

    private void segment(ObjectNode node, SegmentAdvice segment) {
        node.put("ref", segment.ref()).put("side", segment.side().word());
        ArrayNode options = node.putArray("options");
        segment.options().forEach(option -> option(options.addObject(), option));
        ArrayNode awaited = node.putArray("awaited");
        soFar.awaited(segment.ref()).forEach(one -> awaited.add(one.technique()));
    }

    private static void option(ObjectNode node, OptionAdvice option) {
        node.put("technique", option.technique())
                .put("standing", option.standing().word());
        option.rank().ifPresent(rank -> node.put("rank", rank));
        ArrayNode rules = node.putArray("rules");
        option.reasons().forEach(reason -> rules.add(reason.rule()));
        option.cautions().forEach(reason -> rules.add(reason.rule()));
        option.needs().forEach(reason -> rules.add(reason.rule()));
    }
}
