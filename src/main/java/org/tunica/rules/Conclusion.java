package org.tunica.rules;

import java.util.List;
import org.tunica.casefile.Word;
import org.tunica.knowledge.Quantity;

/** What a rule concludes about an option. */
public sealed interface Conclusion {
    /** The kind, which fixes stage, id prefix and class. */
    Kind kind();

    /** The conclusion as a sentence after "then". */
    String sentence();

    /** Limits it names. */
    default List<Quantity> limits() {
        return List.of();
    }

    /** Exclude, measure first, not in the room, bring to the meeting: conclusions without an object. */
    record Plainly(Kind kind) implements Conclusion {
        @Override
        public String sentence() {
            return kind.sentence();
        }
    }

    /** A finding. */
    record Find(String finding) implements Conclusion {
        @Override
        public Kind kind() {
            return Kind.FIND;
        }

        @Override
        public String sentence() {
            return "find " + finding;
        }
    }

    /** A caution, or a reason for or against, with how much it counts. */
    record Weighed(Kind kind, Strength strength) implements Conclusion {
        @Override
        public String sentence() {
            return kind.sentence() + " " + strength.words();
        }
    }

    /** One value of a setting. */
    record SetTo(String settingId, String settingName, Quantity value) implements Conclusion {
        @Override
        public Kind kind() {
            return Kind.SET;
        }

        @Override
        public List<Quantity> limits() {
            return List.of(value);
        }

        @Override
        public String sentence() {
            return "set " + settingName + " to limit " + value.id();
        }
    }

    /** A range of a setting. */
    record Keep(String settingId, String settingName, Quantity low, Quantity high) implements Conclusion {
        @Override
        public Kind kind() {
            return Kind.SET;
        }

        @Override
        public List<Quantity> limits() {
            return List.of(low, high);
        }

        @Override
        public String sentence() {
            return "keep " + settingName + " between limit " + low.id() + " and limit " + high.id();
        }
    }

    /** How much a reason counts. */
    enum Strength implements Word {
        FIRST_CHOICE("as first choice"),
        STRONG("strongly"),
        MODERATE("moderately"),
        SLIGHT("slightly");

        private final String words;

        Strength(String words) {
            this.words = words;
        }

        /** The words a rule uses. */
        public String words() {
            return words;
        }
    }

    /** Kinds of conclusion; stage, prefix and class follow from the kind, never from the author. */
    enum Kind {
        FIND(1, "1-findings", "FIN", "finding", "find", "finding"),
        EXCLUDE(2, "2-exclusions", "EXC", "contraindication", "exclude", "reason to exclude"),
        MEASURE_FIRST(2, "2-exclusions", "NEE", "data-quality", "measure first", "need to measure first"),
        NOT_IN_ROOM(2, "2-exclusions", "ROM", "logistics", "mark as not in the room", "device or drug missing"),
        CAUTION(3, "3-cautions", "CAU", "caution", "caution", "caution"),
        PREFER(4, "4-preferences", "PRE", "preference", "prefer", "reason to prefer"),
        DISFAVOUR(4, "4-preferences", "PRE", "preference", "disfavour", "reason to disfavour"),
        SET(5, "5-settings", "SET", "setting", "set", "setting"),
        MEET(6, "6-meeting", "MEE", "meeting", "bring to the meeting", "sign of a hard case");

        private final int stage;
        private final String folder;
        private final String prefix;
        private final String ruleClass;
        private final String sentence;
        private final String noun;

        Kind(int stage, String folder, String prefix, String ruleClass, String sentence, String noun) {
            this.stage = stage;
            this.folder = folder;
            this.prefix = prefix;
            this.ruleClass = ruleClass;
            this.sentence = sentence;
            this.noun = noun;
        }

        /** 1 to 6; stages run in this order. */
        public int stage() {
            return stage;
        }

        /** Whether it is asked once the ranking stands; what it says cannot change the ranking. */
        public boolean afterRanking() {
            return this == MEET;
        }

        /** The kinds a later rule may ask for; a need to measure is none, for it turns up when something is blanked. */
        public static final List<Kind> ASKED_LATER = List.of(EXCLUDE, NOT_IN_ROOM, CAUTION, PREFER, DISFAVOUR);

        String one() {
            return "a " + noun;
        }

        String none() {
            return "no " + noun;
        }

        /** The folder under rules/ it stands in. */
        public String folder() {
            return folder;
        }

        /** How the ids of its rules start. */
        public String prefix() {
            return prefix;
        }

        /** The class of its rules. */
        public String ruleClass() {
            return ruleClass;
        }

        /** How its sentences start. */
        public String sentence() {
            return sentence;
        }
    }
}
