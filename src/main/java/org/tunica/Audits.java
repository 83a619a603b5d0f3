package org.tunica;

import java.util.Map;
import org.tunica.outcomes.Audit;
import org.tunica.outcomes.AuditQuestion;
import org.tunica.outcomes.Auditor;
import org.tunica.paper.Document;
import org.tunica.pastcases.EachCase;
import org.tunica.picture.OutcomePicture;
import org.tunica.plan.Advice;

/** Everything a user can ask about the results of past cases. Immutable. */
public final class Audits {
    private final Auditor auditor;
    private final Advice.Release release;

    Audits(Auditor auditor, Advice.Release release) {
        this.auditor = auditor;
        this.release = release;
    }

    /**
     * Results of past cases held against published rates and each other.
     *
     * @param cases in the order of their base
     * @throws org.tunica.casefile.FaultyInput with everything that cannot be asked, or what the cases cannot be read for
     */
    public Audit audit(EachCase cases, AuditQuestion question) {
        return auditor.audit(cases, question);
    }

    /** An audit as a page without charts. */
    public Document text(Audit audit) {
        return auditor.text(audit);
    }

    /** An audit as a page with charts. */
    public Document page(Audit audit) {
        return auditor.page(audit, release);
    }

    /** What was looked at and how all techniques stand at one year, as a page without charts. */
    public Document glance(Audit audit) {
        return auditor.glance(audit);
    }

    /** The charts of an audit, each by a name for its file, with heading, table and notes. */
    public Map<String, OutcomePicture> charts(Audit audit, int widthPx) {
        return auditor.charts(audit, release, widthPx);
    }
}
