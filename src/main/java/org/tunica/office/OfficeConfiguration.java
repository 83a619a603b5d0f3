package org.tunica.office;

import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;

/** Everything of these pages that answers requests. */
@Configuration(proxyBeanMethods = false)
@Import({
    Desks.class,
    RulePages.class,
    FeedbackPages.class,
    ReleasePages.class,
    ReleaseActs.class,
    ChangePages.class,
    ChangeActs.class,
    EditPages.class,
    ReplayRuns.class
})
public class OfficeConfiguration {}
