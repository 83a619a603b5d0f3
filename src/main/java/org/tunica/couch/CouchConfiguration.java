package org.tunica.couch;

import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;

/** Everything of these pages that answers requests. */
@Configuration(proxyBeanMethods = false)
@Import(CasePages.class)
public class CouchConfiguration {}
