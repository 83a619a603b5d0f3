package org.tunica.couch;

import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;

/** Everything of these pages that answers requests. */
@Configuration(proxyBeanMethods = false)
@Import({CaseFormPages.class, CasePages.class, PlanPages.class, WindowPages.class})
public class CouchConfiguration {}
