package org.tunica.meeting;

import java.security.SecureRandom;
import java.util.HexFormat;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.tunica.Tunica;
import org.tunica.couch.PastLibrary;
import org.tunica.frame.OpenCases;
import org.tunica.store.Store;

/** Everything of the meeting that answers requests. */
@Configuration(proxyBeanMethods = false)
@Import({DecisionPages.class, PacketPages.class, QueuePages.class, ReferPages.class})
public class MeetingConfiguration {
    private static final int ID_BYTES = 6;

    @Bean
    MeetingBoard meetingBoard(Store store) {
        SecureRandom random = new SecureRandom();
        return new MeetingBoard(store, () -> {
            byte[] id = new byte[ID_BYTES];
            random.nextBytes(id);
            return "m-" + HexFormat.of().formatHex(id);
        });
    }

    @Bean
    Packets packets(Tunica tunica, Store store, OpenCases cases, MeetingBoard board, PastLibrary past) {
        return new Packets(tunica, store, cases, board, past);
    }

    @Bean
    HardCases hardCases(Tunica tunica, Store store, OpenCases cases, PastLibrary past) {
        return new HardCases(tunica, store, cases, past);
    }
}
