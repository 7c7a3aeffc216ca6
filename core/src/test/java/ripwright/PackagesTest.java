package ripwright;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The wall between what others may call and what is ours, and the one way that arrows between packages point. */
class PackagesTest {
    private static final JavaClasses CORE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("ripwright");

    private static final String INTERNAL = "ripwright.internal";
    private static final int MOST_CLASSES = 25; // of a package, package-info left out

    /** Each uses only those named before it. */
    private static final List<String> ORDER = List.of(
            "ripwright.measure",
            "ripwright.stock",
            "ripwright.bill",
            "ripwright.saw",
            "ripwright.job",
            "ripwright.plan",
            "ripwright.internal.lp",
            "ripwright.internal.knapsack",
            "ripwright.internal.geometry",
            "ripwright.internal.firstfit",
            "ripwright.internal.model",
            "ripwright.internal.recreate",
            "ripwright.internal.onedimensional",
            "ripwright.internal.pricing",
            "ripwright.internal.bound",
            "ripwright.internal.proof",
            "ripwright.internal.search",
            "ripwright.internal.pieces",
            "ripwright.internal.testwood",
            "ripwright.internal.cost",
            "ripwright.internal.sequence",
            "ripwright.internal.replay",
            "ripwright.internal.replay.layout",
            "ripwright.internal.replay.leftovers",
            "ripwright.internal.replay.tests",
            "ripwright.internal.replay.steps",
            "ripwright.internal.replay.figures",
            "ripwright.internal.meant",
            "ripwright.replay",
            "ripwright.settle",
            "ripwright",
            "ripwright.shared",
            "ripwright.resume");

    @Test
    void every_package_has_its_place_in_the_order() {
        assertThat(CORE.stream().map(JavaClass::getPackageName).distinct()).containsExactlyInAnyOrderElementsOf(ORDER);
    }

    @Test
    void packages_use_only_those_before_them() {
        for (int i = 0; i + 1 < ORDER.size(); i++)
            noClasses()
                    .that()
                    .resideInAPackage(ORDER.get(i))
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(ORDER.subList(i + 1, ORDER.size()).toArray(String[]::new))
                    .check(CORE);
    }

    @Test
    void replay_shares_no_arithmetic_with_what_plans() {
        String[] planning = ORDER.stream()
                .filter(name -> name.startsWith(INTERNAL + ".") && !name.startsWith(INTERNAL + ".replay"))
                .toArray(String[]::new);
        noClasses()
                .that()
                .resideInAnyPackage("ripwright.replay", INTERNAL + ".replay..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(planning)
                .check(CORE);
    }

    @Test
    void no_public_signature_shows_what_is_internal() {
        List<String> shown = new ArrayList<>();
        for (JavaClass type : CORE) {
            if (isInternal(type) || !isPublic(type)) continue;
            for (JavaCodeUnit unit : type.getCodeUnits()) {
                boolean open = unit.getModifiers().contains(JavaModifier.PUBLIC)
                        || unit.getModifiers().contains(JavaModifier.PROTECTED);
                if (open && types(unit).anyMatch(PackagesTest::isHidden)) shown.add(unit.getFullName());
            }
            type.getFields().stream()
                    .filter(field -> field.getModifiers().contains(JavaModifier.PUBLIC))
                    .filter(field ->
                            field.getType().getAllInvolvedRawTypes().stream().anyMatch(PackagesTest::isHidden))
                    .forEach(field -> shown.add(field.getFullName()));
        }
        assertThat(shown).isEmpty();
    }

    private static Stream<JavaClass> types(JavaCodeUnit unit) {
        return Stream.concat(
                unit.getReturnType().getAllInvolvedRawTypes().stream(),
                unit.getParameterTypes().stream().flatMap(type -> type.getAllInvolvedRawTypes().stream()));
    }

    /** Of our own, and either in an internal package or not public. */
    private static boolean isHidden(JavaClass type) {
        return type.getPackageName().startsWith("ripwright") && (isInternal(type) || !isPublic(type));
    }

    private static boolean isInternal(JavaClass type) {
        return type.getPackageName().startsWith(INTERNAL);
    }

    private static boolean isPublic(JavaClass type) {
        return type.getModifiers().contains(JavaModifier.PUBLIC)
                && type.getEnclosingClass().map(PackagesTest::isPublic).orElse(true);
    }

    @Test
    void no_name_stands_in_two_packages_and_no_package_is_a_crowd() {
        Map<String, List<String>> packages = new HashMap<>();
        Map<String, Integer> sizes = new HashMap<>();
        for (JavaClass type : CORE) {
            if (!type.isTopLevelClass() || type.getSimpleName().equals("package-info")) continue;
            packages.computeIfAbsent(type.getSimpleName(), name -> new ArrayList<>())
                    .add(type.getPackageName());
            sizes.merge(type.getPackageName(), 1, Integer::sum);
        }
        assertThat(packages.values()).allSatisfy(places -> assertThat(places).hasSize(1));
        assertThat(sizes.values()).allSatisfy(size -> assertThat(size).isLessThanOrEqualTo(MOST_CLASSES));
    }

    @Test
    void the_core_knows_no_file_no_console_and_no_json() {
        noClasses()
                .should()
                .dependOnClassesThat(resideInAnyPackage("java.io..", "java.nio.file..", "com.fasterxml..")
                        .and(DescribedPredicate.not(type(java.io.Serializable.class))))
                .check(CORE);
    }

    @Test
    void only_the_search_knows_the_solver() {
        classes()
                .that()
                .resideOutsideOfPackage(INTERNAL + ".search")
                .should()
                .onlyDependOnClassesThat(DescribedPredicate.not(resideInAnyPackage("org.optaplanner..")))
                .check(CORE);
    }
}
