package org.tunica.couch;

import java.util.Optional;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.springframework.context.annotation.Lazy;
import org.tunica.Tunica;
import org.tunica.archive.PastCaseDesk;
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
    OfferPages.class,
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

    @Bean
    PastCaseDesk pastCaseDesk(Tunica tunica, Store store) {
        return new PastCaseDesk(tunica, store);
    }

    @Bean(destroyMethod = "close")
    AdviceShelf adviceShelf(Tunica tunica) {
        return new AdviceShelf(tunica);
    }

    @Bean(destroyMethod = "close")
    PastLibrary pastLibrary(Tunica tunica, Store store, SharedIndex index) {
        return new PastLibrary(tunica, store, index.address().map(tunica.likeness()::cluster));
    }

    /** Starts what follows a shared index, without waiting for somebody to ask; where there is none, nothing. */
    @Lazy(false)
    @Bean(destroyMethod = "close")
    Followers followers(Tunica tunica, Store store, SharedIndex index, PastLibrary past) {
        return new Followers(index.address()
                .map(address ->
                        new IndexFollower(tunica, store, tunica.likeness().cluster(address), past)));
    }

    /** What works behind the pages. */
    record Followers(Optional<IndexFollower> index) implements AutoCloseable {
        @Override
        public void close() {
            index.ifPresent(IndexFollower::close);
        }
    }
}
