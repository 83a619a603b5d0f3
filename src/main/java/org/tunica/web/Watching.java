package org.tunica.web;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.tunica.store.Store;

/** What tells those who look after the server how it does. */
@Configuration(proxyBeanMethods = false)
class Watching {
    @Bean("storeHealthIndicator")
    StoreHealth storeHealth(Store store) {
        return new StoreHealth(store);
    }

    @Bean
    AuditHeadLog auditHeadLog(Store store) {
        return new AuditHeadLog(store.audit());
    }
}
