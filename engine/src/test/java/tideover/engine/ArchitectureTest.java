package tideover.engine;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;

/** The house keeps its order: each engine package may use only those named before it, and none touches the world. */
class ArchitectureTest {
    private static final List<String> ROOMS_IN_ORDER = List.of(
            "quantity",
            "why",
            "sun",
            "site",
            "cold",
            "load",
            "outage",
            "battery",
            "electronics",
            "part",
            "rig",
            "wiring",
            "proof",
            "search",
            "meter",
            "answer");

    private static final JavaClasses ENGINE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("tideover.engine");

    @Test
    void everyRoomUsesOnlyTheRoomsBeforeIt() {
        for (int i = 0; i < ROOMS_IN_ORDER.size(); i++) {
            String[] later = ROOMS_IN_ORDER.subList(i + 1, ROOMS_IN_ORDER.size()).stream()
                    .map(room -> "tideover.engine." + room + "..")
                    .toArray(String[]::new);
            if (later.length > 0) {
                noClasses()
                        .that()
                        .resideInAPackage("tideover.engine." + ROOMS_IN_ORDER.get(i) + "..")
                        .should()
                        .dependOnClassesThat()
                        .resideInAnyPackage(later)
                        .allowEmptyShould(true)
                        .check(ENGINE);
            }
        }
        noClasses()
                .that()
                .resideInAPackage("tideover.engine.meter..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("tideover.engine.search..")
                .allowEmptyShould(true)
                .check(ENGINE);
    }

    @Test
    void noClassLivesOutsideTheNamedRooms() {
        ENGINE.forEach(type -> {
            String room = type.getPackageName()
                    .replaceFirst("^tideover\\.engine\\.?", "")
                    .replaceFirst("\\..*", "");
            Assertions.assertThat(ROOMS_IN_ORDER).as(type.getFullName()).contains(room);
        });
    }

    @Test
    void engineOpensNoFileSocketClockOrLog() {
        noClasses()
                .that()
                .resideInAPackage("tideover.engine..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "java.io..",
                        "java.nio.file..",
                        "java.net..",
                        "java.util.logging..",
                        "org.slf4j..",
                        "java.sql..")
                .check(ENGINE);
        noClasses()
                .that()
                .resideInAPackage("tideover.engine..")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(Math.class, "random")
                .check(ENGINE);
    }
}
