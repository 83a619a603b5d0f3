package org.tunica.cli;

import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tunica.store.AuditHead;
import org.tunica.store.Store;
import org.tunica.store.Verification;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Checks the audit trail. */
@Command(
        name = "verify",
        description =
                "Check every row of the audit trail, and that all that is kept is as the trail tells. Somebody who can"
                        + " write the whole trail anew is found only with a head noted elsewhere: note the one printed here.",
        mixinStandardHelpOptions = true)
final class VerifyCommand implements Callable<Integer> {
    @Mixin
    private DataPlace data = new DataPlace();

    @Option(
            names = "--noted",
            paramLabel = "HEAD",
            description = "A head that this command or backup printed earlier; it must still be part of the trail.")
    private Optional<String> noted = Optional.empty();

    @Spec
    private CommandSpec spec;

    VerifyCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        Optional<AuditHead> head = noted.map(AuditHead::of);
        try (Store store = Store.existing(data.place(), Clock.systemUTC())) {
            Verification found = head.map(store.audit()::verify).orElseGet(store.audit()::verify);
            found.throwUnlessSound("data");
            spec.commandLine()
                    .getOut()
                    .printf(
                            "The audit trail holds. Rows checked: %d; things kept that are as it tells: %d.%nIts head: %s%n",
                            found.auditRows(), found.keptRows(), found.head());
        }
        return 0;
    }
}
