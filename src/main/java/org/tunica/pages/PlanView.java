package org.tunica.pages;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tunica.casefile.UcumWords;
import org.tunica.knowledge.Knowledge;
import org.tunica.plan.SettingsAdvice;
import org.tunica.session.SessionPlan;
import org.tunica.session.TimePart;
import org.tunica.wording.ForecastWords;
import org.tunica.wording.SettingWords;

/**
 * A plan of sessions as a page shows it.
 *
 * @param release which rules and knowledge, and that they are a draft when they are one
 * @param sureness whether a better plan may exist
 * @param left segments that get nothing, with the reason
 * @param fewer what fewer sessions would cost
 * @param bound limits without which the plan would be better
 */
public record PlanView(
        String release,
        String sureness,
        List<SessionView> sessions,
        List<String> left,
        List<Otherwise> fewer,
        List<Otherwise> bound) {
    /**
     * One session.
     *
     * @param shared what its segments share, each against its limit
     * @param prepare what must be ready
     * @param overhead time beside the segments
     */
    public record SessionView(
            String title, List<StepView> steps, List<ShareBar> shared, List<String> prepare, String overhead) {}

    /**
     * One segment in the order of work.
     *
     * @param lines settings, position, time and why it is done here
     */
    public record StepView(int order, String where, String says, List<String> lines) {}

    /** What would be done otherwise under one condition. */
    public record Otherwise(String says, List<String> changes) {}

    /** The view of a plan. */
    public static PlanView of(SessionPlan plan, Knowledge knowledge) {
        return new PlanView(
                AdviceView.release(plan.release()),
                plan.proved()
                        ? "No plan under these limits has more points (" + SettingWords.plain(plan.points()) + ")."
                        : "The search was stopped early: a plan with more than " + SettingWords.plain(plan.points())
                                + " points may exist.",
                plan.sessions().stream()
                        .map(session -> session(plan, session, knowledge))
                        .toList(),
                plan.left().stream()
                        .map(left -> left.ref() + ", " + left.side().word().toUpperCase(Locale.ROOT) + " leg: "
                                + left.leaving().word().replace('-', ' ') + ", " + left.why())
                        .toList(),
                plan.fewerSessions().stream()
                        .map(fewer -> new Otherwise(
                                "In " + (fewer.sessions() == 1 ? "one session" : fewer.sessions() + " sessions") + " ("
                                        + SettingWords.plain(fewer.points()) + " points)",
                                fewer.changes()))
                        .toList(),
                plan.boundBy().stream().map(PlanView::bound).toList());
    }

    private static Otherwise bound(SessionPlan.Bound one) {
        String unit = UcumWords.behind(one.unit());
        return new Otherwise(
                one.says() + ", at most " + SettingWords.plain(one.limit()) + unit
                        + " in a session. Without that limit one session would take "
                        + SettingWords.plain(one.wouldTake()) + unit,
                one.changes());
    }

    private static SessionView session(SessionPlan plan, SessionPlan.Session session, Knowledge knowledge) {
        int of = plan.sessions().size();
        String minutes = session.allMinutes().isPresent()
                ? ", about " + Math.round(session.allMinutes().getAsDouble()) + " minutes"
                : ", time not known";
        return new SessionView(
                "Session " + session.number() + (of > 1 ? " of " + of : "") + minutes,
                session.steps().stream().map(step -> step(step, knowledge)).toList(),
                new ShareBars(plan, session, knowledge).all(),
                session.prepare(),
                times(session.overhead()));
    }

    private static StepView step(SessionPlan.Step step, Knowledge knowledge) {
        return new StepView(
                step.order(),
                step.ref() + ": " + step.side().word().toUpperCase(Locale.ROOT) + " leg, "
                        + step.vein().word().replace('-', ' ') + ", "
                        + step.level().word().replace('-', ' '),
                step.says() + " (" + step.standing().word().replace('-', ' ') + ", rank " + step.rank() + ")",
                lines(step, knowledge));
    }

    private static List<String> lines(SessionPlan.Step step, Knowledge knowledge) {
        Optional<String> proposal = proposal(step.settings());
        String custom = String.join("; ", SettingWords.parts(step.settings(), knowledge));
        return List.of(
                        step.instead().map(first -> "first in rank would be " + first),
                        proposal.map(says -> "propose " + says),
                        custom.isEmpty() ? Optional.<String>empty() : Optional.of("custom and amounts: " + custom),
                        Optional.of(step.position().word().replace('-', ' ') + "; " + times(step.time())),
                        step.because().isEmpty()
                                ? Optional.<String>empty()
                                : Optional.of("here because " + String.join("; ", step.because())))
                .stream()
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<String> proposal(SettingsAdvice settings) {
        boolean computed = settings.leedJPerCm().isPresent()
                || settings.cycles().isPresent()
                || settings.pulsesPerCm().isPresent();
        return computed ? Optional.of(ForecastWords.proposal(settings)) : Optional.empty();
    }

    private static String times(List<TimePart> parts) {
        return parts.isEmpty()
                ? "time not known"
                : parts.stream()
                        .map(part -> part.says() + " " + Math.max(1, Math.round(part.workMinutes())) + " min")
                        .collect(Collectors.joining(", "));
    }
}
