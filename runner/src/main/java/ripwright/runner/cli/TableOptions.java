package ripwright.runner.cli;

import picocli.CommandLine.Option;
import ripwright.json.csv.CsvOut;

/** Options of commands that write tables for spreadsheets beside what else they write. */
final class TableOptions {
    @Option(
            names = "--tables",
            description = "Also write tables for spreadsheets, as in lockers.cuts.csv or lockers.trial.csv.")
    private boolean tables;

    @Option(
            names = "--semicolons",
            description =
                    "Write tables with semicolons between cells and decimal commas, as spreadsheets in much of the "
                            + "world expect them.")
    private boolean semicolons;

    boolean asked() {
        return tables || semicolons;
    }

    CsvOut.Style style() {
        return semicolons ? CsvOut.Style.SEMICOLONS : CsvOut.Style.COMMAS;
    }
}
