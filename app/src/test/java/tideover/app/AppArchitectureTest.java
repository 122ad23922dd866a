package tideover.app;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The app's rooms: commands know reading and reporting, those two know neither each other nor commands. */
class AppArchitectureTest {
    /** What of java.net opens nothing: names alone. */
    private static final Set<String> NAMES_ONLY =
            Set.of("java.net.URI", "java.net.URISyntaxException", "java.net.URLEncoder", "java.net.URLDecoder");

    private static final JavaClasses APP = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("tideover.app");

    @Test
    void everyClassLivesInANamedRoom() {
        classes()
                .should()
                .resideInAnyPackage(
                        "tideover.app.cli..",
                        "tideover.app.files..",
                        "tideover.app.report..",
                        "tideover.app.store..",
                        "tideover.app.web..",
                        "tideover.app.pages..")
                .check(APP);
    }

    @Test
    void reportsKnowNoFilesAndNoCommands() {
        noClasses()
                .that()
                .resideInAPackage("tideover.app.report..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("tideover.app.files..", "tideover.app.cli..", "java.nio.file..")
                .check(APP);
    }

    @Test
    void filesKnowNoReportsAndNoCommands() {
        noClasses()
                .that()
                .resideInAPackage("tideover.app.files..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("tideover.app.report..", "tideover.app.cli..", "picocli..")
                .check(APP);
    }

    @Test
    void storeKnowsTextsAlone() {
        noClasses()
                .that()
                .resideInAPackage("tideover.app.store..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "tideover.app.web..",
                        "tideover.app.report..",
                        "tideover.app.files..",
                        "tideover.app.cli..",
                        "tideover.app.pages..",
                        "tideover.engine..")
                .check(APP);
        noClasses()
                .that()
                .resideOutsideOfPackage("tideover.app.store..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.sql..", "org.jdbi..", "org.sqlite..")
                .check(APP);
    }

    @Test
    void pagesKnowNoCommandsAndNobodyElseServes() {
        noClasses()
                .that()
                .resideInAPackage("tideover.app.web..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("tideover.app.cli..", "picocli..")
                .check(APP);
        noClasses()
                .that()
                .resideOutsideOfPackages("tideover.app.web..", "tideover.app.cli..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("io.javalin..", "org.eclipse.jetty..", "tideover.app.web..")
                .andShould()
                .resideOutsideOfPackage("tideover.app.pages..")
                .check(APP);
    }

    /** Commands go in by the one door: what walks outages, draws weather or searches is not called from here. */
    @Test
    void nobodyOutsideTheEngineSimulates() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("tideover.engine.proof.Prover")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("tideover.engine.search.Search")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("tideover.engine.site.WeatherGenerator")
                .check(APP);
    }

    @Test
    void onlyCommandsTouchStandardStreamsAndTheExit() {
        noClasses()
                .that()
                .resideOutsideOfPackage("tideover.app.cli..")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .accessField(System.class, "in")
                .orShould()
                .callMethod(System.class, "exit", int.class)
                .orShould()
                .callMethod(Throwable.class, "printStackTrace")
                .check(APP);
    }

    @Test
    void nothingOpensAConnection() {
        noClasses()
                .should()
                .dependOnClassesThat(describe(
                        "open connections",
                        (JavaClass type) ->
                                type.getPackageName().startsWith("java.net") && !NAMES_ONLY.contains(type.getName())))
                .orShould()
                .dependOnClassesThat()
                .resideInAnyPackage("javax.net..", "com.sun.net..", "java.rmi..", "javax.naming..")
                .check(APP);
        noClasses()
                .that()
                .doNotHaveFullyQualifiedName("tideover.app.store.Guarded")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.nio.channels..")
                .check(APP);
    }
}
