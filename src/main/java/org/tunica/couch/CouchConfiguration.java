package org.tunica.couch;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.tunica.Tunica;
import org.tunica.store.Store;

/** Everything of these pages that answers requests. */
@Configuration(proxyBeanMethods = false)
@Import({
    CaseFormPages.class,
    CasePages.class,
    DeliveredPages.class,
    PaperPages.class,
    PlanPages.class,
    VisitPages.class,
    WindowPages.class
})
public class CouchConfiguration {
    @Bean
    PastLibrary pastLibrary(Tunica tunica, Store store) {
        return new PastLibrary(tunica, store);
    }
}
