package org.tunica.cli;

import java.util.concurrent.Callable;
import org.tunica.Tunica;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the JSON Schema of a contract. */
@Command(
        name = "schema",
        description = "Print the JSON Schema (2020-12) of a case or of an advice.",
        mixinStandardHelpOptions = true)
final class SchemaCommand implements Callable<Integer> {
    /** The contracts there are. */
    enum Contract {
        CASE,
        ADVICE;

        @Override
        public String toString() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    @Parameters(paramLabel = "CONTRACT", description = "One of: ${COMPLETION-CANDIDATES}.")
    private Contract contract = Contract.CASE;

    @Spec
    private CommandSpec spec;

    SchemaCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        Tunica tunica = Tunica.shipped();
        spec.commandLine()
                .getOut()
                .print(
                        switch (contract) {
                            case CASE -> tunica.caseSchema();
                            case ADVICE -> tunica.adviceSchema();
                        });
        return 0;
    }
}
