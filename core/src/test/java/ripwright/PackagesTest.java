package ripwright;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PackagesTest {
    private static final JavaClasses CORE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("ripwright");

    /** Each uses only those named before it; replay does without the packer's arithmetic, and so without these. */
    private static final List<String> ORDER = List.of(
            "measure",
            "stock",
            "bill",
            "saw",
            "job",
            "pattern",
            "bound",
            "solve",
            "plan",
            "sequence",
            "replay",
            "settle",
            "resume");

    @Test
    void packages_use_only_those_to_their_left() {
        for (int i = 0; i < ORDER.size(); i++) {
            List<String> right = new ArrayList<>();
            for (String later : ORDER.subList(i + 1, ORDER.size())) right.add("ripwright." + later + "..");
            right.add("ripwright");
            noClasses()
                    .that()
                    .resideInAPackage("ripwright." + ORDER.get(i) + "..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(right.toArray(String[]::new))
                    .check(CORE);
        }
    }

    @Test
    void replay_shares_no_arithmetic_with_the_packer() {
        noClasses()
                .that()
                .resideInAPackage("ripwright.replay..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "ripwright.pattern..", "ripwright.bound..", "ripwright.solve..", "ripwright.sequence..")
                .check(CORE);
    }

    @Test
    void the_core_knows_no_file_no_console_and_no_json() {
        noClasses()
                .should()
                .dependOnClassesThat(resideInAnyPackage("java.io..", "java.nio.file..", "com.fasterxml..")
                        .and(com.tngtech.archunit.base.DescribedPredicate.not(
                                com.tngtech.archunit.core.domain.JavaClass.Predicates.type(
                                        java.io.Serializable.class))))
                .check(CORE);
    }

    @Test
    void only_the_search_knows_the_solver() {
        classes()
                .that()
                .resideOutsideOfPackage("ripwright.solve..")
                .should()
                .onlyDependOnClassesThat(
                        com.tngtech.archunit.base.DescribedPredicate.not(resideInAnyPackage("org.optaplanner..")))
                .check(CORE);
    }
}
