package ripwright.runner;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The rooms of the runner, and which may use which. */
@AnalyzeClasses(
        packages = {"ripwright.runner", "ripwright.json"},
        importOptions = RunnerPackagesTest.NoTests.class)
class RunnerPackagesTest {
    /** Those of the JSON module come as a jar of their own. */
    static final class NoTests implements ImportOption {
        @Override
        public boolean includes(Location location) {
            return new DoNotIncludeTests().includes(location) && !location.contains("-tests.jar");
        }
    }

    @ArchTest
    static final ArchRule trees_know_nothing_of_boards = classes()
            .that()
            .resideInAPackage("ripwright.json.tree..")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("ripwright.json.tree..", "com.fasterxml.jackson..", "java..", "org.jspecify..");

    @ArchTest
    static final ArchRule files_know_nothing_of_commands_and_sheets = noClasses()
            .that()
            .resideInAPackage("ripwright.json")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "ripwright.runner.cli..",
                    "ripwright.runner.rack..",
                    "ripwright.runner.sheet..",
                    "com.fasterxml.jackson..");

    @ArchTest
    static final ArchRule disks_know_nothing_of_boards = classes()
            .that()
            .resideInAPackage("ripwright.runner.disk..")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("ripwright.runner.disk..", "ripwright.json.tree..", "java..", "org.jspecify..");

    @ArchTest
    static final ArchRule racks_know_nothing_of_commands_and_sheets = noClasses()
            .that()
            .resideInAPackage("ripwright.runner.rack..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("ripwright.runner.cli..", "ripwright.runner.sheet..");

    @ArchTest
    static final ArchRule sheets_know_nothing_of_commands_and_files = noClasses()
            .that()
            .resideInAPackage("ripwright.runner.sheet..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("ripwright.runner.cli..", "ripwright.json..", "ripwright.json.tree..");

    @ArchTest
    static final ArchRule trials_and_spreadsheets_know_nothing_of_commands = noClasses()
            .that()
            .resideInAnyPackage("ripwright.runner.trial..", "ripwright.json.csv..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("ripwright.runner.cli..");

    @ArchTest
    static final ArchRule the_core_is_entered_by_its_door =
            noClasses().should().dependOnClassesThat().resideInAnyPackage("ripwright.internal..", "org.optaplanner..");

    @ArchTest
    static final ArchRule no_two_rooms_need_each_other =
            slices().matching("ripwright.runner.(*)..").should().beFreeOfCycles();
}
