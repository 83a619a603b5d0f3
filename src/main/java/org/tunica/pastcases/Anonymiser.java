package org.tunica.pastcases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.tunica.casefile.Faults;
import org.tunica.knowledge.Knowledge;
import org.tunica.treatment.DeliveredSession;
import org.tunica.treatment.FollowUp;

/**
 * Takes the person out of a finished case. It builds every record anew from the fields it knows, so that a field nobody
 * decided about stays out.
 *
 * <p>A case gets in with an outcome, good or bad: without the bad ones the base would lie.
 */
public final class Anonymiser {
    private static final Pattern ID = Pattern.compile(PastCase.ID);
    private static final Pattern SITE = Pattern.compile(PastCase.SITE);
    private static final int YEAR_DIGITS = 4;

    private final Rounding rounding;
    private final Banding ages;
    private final Banding weights;
    private final NoteScrubber scrubber;
    private final int outcomeFromDays;
    private final Supplier<String> ids;

    /**
     * An anonymiser of a release.
     *
     * @param ids random ids as {@link PastCase#ID} wants them; nothing of a case may be in them
     */
    public Anonymiser(Knowledge knowledge, Supplier<String> ids) {
        this.rounding = new Rounding(knowledge);
        this.ages = Banding.ofAge(knowledge);
        this.weights = Banding.ofWeight(knowledge);
        this.scrubber = new NoteScrubber(knowledge);
        this.outcomeFromDays = AnonymityLimits.of(knowledge).outcomeFromDays();
        this.ids = ids;
    }

    /**
     * The same case without the person.
     *
     * @throws org.tunica.casefile.FaultyInput with every reason why it cannot become a past case
     */
    public WaitingCase anonymise(Finished finished) {
        Faults faults = new Faults();
        check(finished, faults);
        String id = ids.get();
        if (!ID.matcher(id).matches()) {
            throw new IllegalArgumentException("an id must look like " + PastCase.ID);
        }
        References references = new References(finished.caseFile(), faults);
        WaitingCase waiting = new WaitingCase(
                WaitingCase.FORMAT,
                id,
                finished.invented(),
                finished.site(),
                year(finished),
                ages.of(finished.caseFile().patient().ageYears()),
                weights.of(finished.caseFile().patient().weightKg()),
                new CaseParts(rounding, references).of(finished.caseFile(), id),
                new DeliveredParts(rounding, references).of(finished.delivered(), id),
                new FollowUpParts(rounding, references).of(finished.followUp(), id),
                scrubber.scrub(texts(finished)));
        if (waiting.delivered().isEmpty()) {
            faults.add("delivered", "nothing was done that is recorded; a past case tells what was done");
        }
        faults.throwIfAny("retain");
        return waiting;
    }

    private void check(Finished finished, Faults faults) {
        if (!SITE.matcher(finished.site()).matches()) {
            faults.add("site", "must be \"site-\" and up to 16 letters and digits, a pseudonym");
        }
        if (finished.followUp().limbs().stream().noneMatch(this::hasOutcome)) {
            faults.add(
                    "follow-up",
                    "no treated segment was scanned on day " + outcomeFromDays
                            + " after the procedure or later; without an outcome it teaches nothing (anonymity.outcome.from)");
        }
    }

    private boolean hasOutcome(FollowUp.FollowedLimb limb) {
        return limb.visits().stream()
                .filter(visit -> visit.daysAfter() >= outcomeFromDays)
                .flatMap(visit -> visit.segments().stream().flatMap(List::stream))
                .anyMatch(Anonymiser::scanned);
    }

    private static boolean scanned(FollowUp.Seen seen) {
        return seen.openLengthCm().isPresent()
                || seen.refluxSeconds().isPresent()
                || seen.clot().isPresent();
    }

    /** The year alone stays of a date. */
    private static OptionalInt year(Finished finished) {
        return finished.year().isPresent()
                ? finished.year()
                : finished.delivered().stream()
                        .flatMap(session -> session.date().stream())
                        .sorted()
                        .mapToInt(date -> Integer.parseInt(date.substring(0, YEAR_DIGITS)))
                        .findFirst();
    }

    /** Every free text of the records and what else was written, session by session. */
    private static List<String> texts(Finished finished) {
        List<String> texts = new ArrayList<>();
        for (DeliveredSession session : finished.delivered()) {
            session.indication().ifPresent(texts::add);
            session.segments()
                    .forEach(segment -> Stream.of(segment.notDone(), segment.incidentNote())
                            .flatMap(Optional::stream)
                            .forEach(texts::add));
            DeliveredSession.Aftercare after = session.aftercare();
            Stream.of(after.compression(), after.prophylaxis(), after.followUp())
                    .flatMap(Optional::stream)
                    .forEach(texts::add);
        }
        texts.addAll(finished.notes());
        return texts;
    }
}
