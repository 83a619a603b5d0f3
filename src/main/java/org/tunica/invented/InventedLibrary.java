package org.tunica.invented;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Room;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;
import org.tunica.pastcases.Band;
import org.tunica.pastcases.PastCase;
import org.tunica.treatment.DeliveredSession;
import org.tunica.treatment.FollowUp;

/**
 * Finished cases that nobody ever was. Each is the same for its seed and number alone, in whatever order they are asked for.
 * Immutable and safe for several threads.
 */
public final class InventedLibrary {
    /** The cases in the library where nobody asks for another number. */
    public static final int USUAL_COUNT = 2_000;

    /** The seed where nobody asks for another. */
    public static final long USUAL_SEED = 1;

    private static final int BAND = 10;
    private static final int YOUNGEST_BAND_FROM = 30;
    private static final int OLDEST = 90;
    private static final int LIGHTEST_BAND_FROM = 50;
    private static final int HEAVIEST = 130;

    private final long seed;
    private final PersonMaker people;
    private final RoomMaker rooms;
    private final LegMaker legs;
    private final Fates fates;
    private final SegmentMaker segments;
    private final SessionMaker sessions;
    private final CourseMaker courses;
    private final Notes notes = new Notes();
    private final Choice<String> sites;
    private final Choice<Integer> years;
    private final Choice<List<Limb.Side>> sides;

    /** The library of a seed, drawn from the distributions and published rates of a release. */
    public InventedLibrary(Knowledge knowledge, long seed) {
        this.seed = seed;
        this.people = new PersonMaker(knowledge);
        this.rooms = new RoomMaker(knowledge);
        this.legs = new LegMaker(knowledge);
        this.fates = new Fates(knowledge);
        this.segments = new SegmentMaker(knowledge, fates);
        this.sessions = new SessionMaker(knowledge);
        this.courses = new CourseMaker(knowledge);
        this.sites = Choice.of(knowledge.invented("invented.site"), word -> "site-" + word);
        this.years = Choice.of(knowledge.invented("invented.year"), Integer::valueOf);
        this.sides = Choice.of(knowledge.invented("invented.legs"), InventedLibrary::sides);
    }

    private static List<Limb.Side> sides(String word) {
        return word.equals("both")
                ? List.of(Limb.Side.LEFT, Limb.Side.RIGHT)
                : List.of(Choice.word(word, Limb.Side.class));
    }

    /** The first cases, from number 0. */
    public Stream<PastCase> cases(long count) {
        return LongStream.range(0, count).mapToObj(this::at);
    }

    /** One case by its number. */
    public PastCase at(long number) {
        Draw draw = new Draw(seed, number);
        String id = "p-" + draw.hex(16) + draw.hex(8);
        while (true) {
            Person person = people.from(draw);
            Room room = rooms.from(draw);
            List<MadeLeg> made = new ArrayList<>();
            for (Limb.Side side : sides.from(draw)) {
                made.add(legs.from(draw, side, person, room.devices().orElseThrow()));
            }
            if (made.stream().anyMatch(leg -> !leg.treated().isEmpty())) {
                return finished(draw, id, person, room, made);
            }
            // nothing in this room fitted any vein of this person: such a person is no past case
        }
    }

    private PastCase finished(Draw draw, String id, Person person, Room room, List<MadeLeg> made) {
        List<Given> given = new ArrayList<>();
        made.forEach(leg ->
                leg.treated().forEach(segment -> given.add(segments.of(draw, leg.side(), segment, person, room))));
        List<DeliveredSession> delivered = sessions.of(id, given, person.weightKg());
        FollowUp followUp = courses.of(draw, id, made, given);
        return new PastCase(
                PastCase.FORMAT,
                id,
                true,
                sites.from(draw),
                OptionalInt.of(years.from(draw)),
                person.ageRecorded()
                        ? Optional.of(band(person.ageYears(), YOUNGEST_BAND_FROM, OLDEST))
                        : Optional.empty(),
                person.weightRecorded()
                        ? Optional.of(band(person.weightKg(), LIGHTEST_BAND_FROM, HEAVIEST))
                        : Optional.empty(),
                new CaseFile(
                        id,
                        person.patient(),
                        room,
                        made.stream().map(MadeLeg::limb).toList()),
                delivered,
                followUp,
                notes.of(draw, given, lastDay(followUp)));
    }

    private static int lastDay(FollowUp followUp) {
        List<FollowUp.Visit> visits = followUp.limbs().get(0).visits();
        return visits.get(visits.size() - 1).daysAfter();
    }

    private static Band band(double value, int from, int most) {
        if (value < from) {
            return Band.under(from);
        }
        int start = (int) value / BAND * BAND;
        return start >= most ? Band.orMore(most) : Band.between(start, start + BAND - 1);
    }

    /** The share of veins treated so that counts as closed after a year, which the cases follow, 0 to 1. */
    public double closedShareAfterAYear(String techniqueId, Segment.Vein vein) {
        return fates.closedShare(techniqueId, vein);
    }
}
