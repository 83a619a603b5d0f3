package org.tunica.couch;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.tunica.Tunica;
import org.tunica.frame.Pages;
import org.tunica.store.Store;

/** Everything of these pages that answers requests. {@code web} brings how records are read. */
@Configuration(proxyBeanMethods = false)
@Import({
    AdvicePages.class,
    CaseFormPages.class,
    CasePages.class,
    DeliveredPages.class,
    ImportPages.class,
    PageScripts.class,
    PaperPages.class,
    PlanPages.class,
    SimilarPages.class,
    VisitPages.class,
    WindowPages.class
})
public class CouchConfiguration {
    @Bean
    FormDesk formDesk(Pages pages, Tunica tunica) {
        return new FormDesk(pages, tunica);
    }

    @Bean(destroyMethod = "close")
    AdviceShelf adviceShelf(Tunica tunica) {
        return new AdviceShelf(tunica);
    }

    @Bean(destroyMethod = "close")
    PastLibrary pastLibrary(Tunica tunica, Store store) {
        return new PastLibrary(tunica, store);
    }
}
