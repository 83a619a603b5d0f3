package org.tunica.cli;

import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.tunica.Tunica;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Prints the JSON Schema of a contract. */
@Command(
        name = "schema",
        description = "Print the JSON Schema (2020-12) of what goes in and out.",
        mixinStandardHelpOptions = true)
final class SchemaCommand implements Callable<Integer> {
    /** The contracts there are. */
    enum Contract {
        CASE,
        ADVICE,
        PLAN,
        DELIVERED,
        FOLLOWUP,
        PAST,
        SIMILAR,
        AUDIT;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Reads the name of a contract as it stands in the help. */
    static final class ContractName implements ITypeConverter<Contract> {
        @Override
        public Contract convert(String name) {
            return Arrays.stream(Contract.values())
                    .filter(contract -> contract.toString().equals(name))
                    .findFirst()
                    .orElseThrow(() -> new TypeConversionException(
                            "must be case, advice, plan, delivered, followup, past, similar or audit, is \"" + name
                                    + "\""));
        }
    }

    @Parameters(
            paramLabel = "CONTRACT",
            description = "One of: ${COMPLETION-CANDIDATES}.",
            converter = ContractName.class)
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
                            case PLAN -> tunica.planSchema();
                            case DELIVERED -> tunica.deliveredSchema();
                            case FOLLOWUP -> tunica.followUpSchema();
                            case PAST -> tunica.pastCaseSchema();
                            case SIMILAR -> tunica.similarSchema();
                            case AUDIT -> tunica.auditSchema();
                        });
        return 0;
    }
}
