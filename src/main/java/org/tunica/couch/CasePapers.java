package org.tunica.couch;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.tunica.store.DocumentKind;
import org.tunica.store.Store;

/**
 * What is kept with a case, kind by kind, the last one first.
 *
 * @param kinds those of which something is kept
 */
public record CasePapers(List<Kind> kinds) {
    private static final List<DocumentKind> SHOWN = List.of(
            DocumentKind.DECISION,
            DocumentKind.REFERRAL,
            DocumentKind.FOLLOW_UP,
            DocumentKind.NOTE,
            DocumentKind.DELIVERED,
            DocumentKind.PLAN,
            DocumentKind.CHOICE,
            DocumentKind.ADVICE);

    public CasePapers {
        kinds = List.copyOf(kinds);
    }

    /**
     * The documents of one kind.
     *
     * @param says what they are
     */
    public record Kind(String says, List<Paper> papers) {
        public Kind {
            papers = List.copyOf(papers);
        }
    }

    /**
     * One document.
     *
     * @param ways where it can be read
     */
    public record Paper(KeptLine line, List<Way> ways) {
        public Paper {
            ways = List.copyOf(ways);
        }
    }

    /** A link. */
    public record Way(String to, String says) {}

    static CasePapers of(Store store, String caseRef) {
        List<Kind> kinds = new ArrayList<>();
        for (DocumentKind kind : SHOWN) {
            List<Paper> papers = new ArrayList<>(store.documents().of(caseRef, kind).stream()
                    .map(kept -> new Paper(KeptLine.of(kept), ways(caseRef, kind, kept.number())))
                    .toList());
            Collections.reverse(papers);
            if (!papers.isEmpty()) {
                kinds.add(new Kind(says(kind), papers));
            }
        }
        return new CasePapers(kinds);
    }

    private static String says(DocumentKind kind) {
        return switch (kind) {
            case ADVICE -> "Advice kept";
            case PLAN -> "Plans of sessions";
            case DELIVERED -> "Records of what was delivered";
            case NOTE -> "Procedure notes";
            case FOLLOW_UP -> "Follow-up";
            case REFERRAL -> "Sent to the meeting";
            case DECISION -> "Decisions of the meeting";
            case CHOICE -> "Choices";
        };
    }

    private static List<Way> ways(String caseRef, DocumentKind kind, long number) {
        String data = "/api/cases/" + caseRef + "/" + kind.word() + "/" + number;
        return switch (kind) {
            case NOTE ->
                List.of(new Way(data + "?as=pdf", "note as PDF"), new Way(data + "?as=html", "note as a page"));
            case PLAN -> List.of(new Way("/cases/" + caseRef + "/plan?number=" + number, "plan"));
            case REFERRAL, DECISION -> List.of(new Way("/cases/" + caseRef + "/meeting", "case and meeting"));
            case ADVICE, CHOICE, DELIVERED, FOLLOW_UP -> List.of(new Way(data, "as data"));
        };
    }
}
