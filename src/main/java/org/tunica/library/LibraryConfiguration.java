package org.tunica.library;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.tunica.Tunica;
import org.tunica.archive.PastCaseDesk;
import org.tunica.couch.PastLibrary;

/** Everything of past cases that answers requests. */
@Configuration(proxyBeanMethods = false)
@Import({PastPages.class, ResultPages.class})
public class LibraryConfiguration {
    @Bean
    Results results(Tunica tunica, PastCaseDesk desk, PastLibrary past) {
        return new Results(tunica, desk, past::lastChange);
    }
}
