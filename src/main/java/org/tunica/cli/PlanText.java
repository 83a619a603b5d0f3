package org.tunica.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.tunica.casefile.UcumWords;
import org.tunica.knowledge.Knowledge;
import org.tunica.plan.SettingsAdvice;
import org.tunica.session.SessionPlan;
import org.tunica.session.TimePart;
import org.tunica.wording.ForecastWords;
import org.tunica.wording.SettingWords;

/** A plan as text: each session in the order of work, what it takes of what is shared, what is left and what bound. */
final class PlanText {
    private static final int MARGIN = 2;
    private static final int INDENT = 6;
    private static final List<Integer> STEP = List.of(2, 4, 8, 34);

    private final Knowledge knowledge;
    private final int width;
    private final StringBuilder out = new StringBuilder();

    PlanText(Knowledge knowledge, int width) {
        this.knowledge = knowledge;
        this.width = width;
    }

    String of(SessionPlan plan) {
        line(
                0,
                "Plan for case " + plan.caseRef() + ". "
                        + plan.release().state().word().toUpperCase(Locale.ROOT) + " rules "
                        + plan.release().version() + ", "
                        + plan.release().digest().substring(0, 19) + ".");
        line(0, plan.caution());
        plan.sessions().forEach(session -> session(session, plan.sessions().size()));
        left(plan.left());
        fewer(plan);
        bound(plan.boundBy());
        out.append('\n');
        line(0, sureness(plan));
        return out.toString();
    }

    private static String sureness(SessionPlan plan) {
        return plan.proved()
                ? "No plan under these limits has more points (" + SettingWords.plain(plan.points()) + ")."
                : "The search was stopped early: a plan with more than " + SettingWords.plain(plan.points())
                        + " points may exist.";
    }

    private void session(SessionPlan.Session session, int of) {
        out.append('\n');
        String minutes = session.allMinutes().isPresent()
                ? ", about " + Math.round(session.allMinutes().getAsDouble()) + " minutes"
                : "";
        String title = "Session " + session.number() + (of > 1 ? " of " + of : "") + minutes;
        line(0, title);
        out.append("=".repeat(Math.min(title.length(), width))).append('\n');
        session.steps().forEach(this::step);
        out.append('\n');
        line(MARGIN, "Shared by this session:");
        session.totals().forEach(total -> line(INDENT, total(total)));
        line(MARGIN, "Make ready:");
        session.prepare().forEach(item -> line(INDENT, item));
        line(MARGIN, "Time beside the segments: " + times(session.overhead()) + ".");
    }

    private void step(SessionPlan.Step step) {
        out.append(Wrap.table(
                width,
                STEP,
                List.of(List.of(
                        "",
                        step.order() + ".",
                        step.ref(),
                        step.side().word().toUpperCase(Locale.ROOT) + " "
                                + step.vein().word().replace('-', ' ') + ", "
                                + step.level().word().replace('-', ' '),
                        step.says() + " (" + step.standing().word() + ", rank " + step.rank() + ")"))));
        step.instead().ifPresent(first -> line(INDENT, "first in rank would be " + first));
        String proposal = proposal(step.settings());
        if (!proposal.isEmpty()) {
            line(INDENT, "propose " + proposal);
        }
        settings(step.settings(), !proposal.isEmpty());
        line(INDENT, step.position().word().replace('-', ' ') + "; " + times(step.time()));
        step.because().forEach(reason -> line(INDENT, "here because " + reason));
    }

    /** Beside a proposal what is customary stands apart, so that no computed amount is read as custom. */
    private void settings(SettingsAdvice settings, boolean proposed) {
        if (!proposed) {
            parts("", SettingWords.parts(settings, knowledge));
            return;
        }
        parts("", SettingWords.amounts(settings, knowledge));
        parts("custom: ", SettingWords.ranges(settings));
    }

    private void parts(String lead, List<String> parts) {
        if (!parts.isEmpty()) {
            line(INDENT, lead + String.join("; ", parts));
        }
    }

    private static String proposal(SettingsAdvice settings) {
        boolean computed = settings.leedJPerCm().isPresent()
                || settings.cycles().isPresent()
                || settings.pulsesPerCm().isPresent();
        return computed ? ForecastWords.proposal(settings) : "";
    }

    private static String times(List<TimePart> parts) {
        return parts.stream()
                .map(part -> part.says() + " " + Math.max(1, Math.round(part.workMinutes())) + " min")
                .collect(Collectors.joining(", "));
    }

    private static String total(SessionPlan.Total total) {
        String unit = UcumWords.behind(total.unit());
        if (total.unit().equals("1") && total.limit().isPresent()) {
            return total.says() + ": "
                    + Math.round(100 * total.amount() / total.limit().getAsDouble())
                    + " % of what a session may take in its form and strength ("
                    + total.limitId().orElseThrow() + ")";
        }
        String limit = total.limit().isPresent()
                ? " of at most " + SettingWords.plain(total.limit().getAsDouble()) + unit + " ("
                        + total.limitId().orElseThrow() + ")"
                : ", no limit set";
        return total.says() + ": " + SettingWords.plain(total.amount()) + unit + limit
                + total.warning().map(words -> "; " + words).orElse("");
    }

    private void left(List<SessionPlan.Left> left) {
        if (!left.isEmpty()) {
            out.append('\n');
            line(MARGIN, "Not in this plan:");
            left.forEach(one -> line(
                    INDENT,
                    one.ref() + ", " + one.side().word().toUpperCase(Locale.ROOT) + " leg: "
                            + one.leaving().word().replace('-', ' ') + ", " + one.why()));
        }
    }

    private void fewer(SessionPlan plan) {
        for (SessionPlan.Fewer fewer : plan.fewerSessions()) {
            out.append('\n');
            line(
                    MARGIN,
                    "In " + (fewer.sessions() == 1 ? "one session" : fewer.sessions() + " sessions") + " ("
                            + SettingWords.plain(fewer.points()) + " points):");
            fewer.changes().forEach(change -> line(INDENT, change));
        }
    }

    private void bound(List<SessionPlan.Bound> bound) {
        for (SessionPlan.Bound one : bound) {
            String unit = UcumWords.behind(one.unit());
            out.append('\n');
            line(
                    MARGIN,
                    "What bound: " + one.says() + ", at most " + SettingWords.plain(one.limit()) + unit
                            + " in a session. Without that limit one session would take "
                            + SettingWords.plain(one.wouldTake()) + unit + ":");
            one.changes().forEach(change -> line(INDENT, change));
        }
    }

    private void line(int indent, String text) {
        out.append(Wrap.paragraph(width, indent, text));
    }
}
