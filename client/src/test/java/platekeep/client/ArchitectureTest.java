package platekeep.client;

import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The rules of the client: who may see whom, who may start threads, who may print. Each rule says why. */
class ArchitectureTest {
    private static final String CLIENT = "platekeep.client";
    private static final String[] SCREENS = {
        "platekeep.client.gallery..",
        "platekeep.client.plate..",
        "platekeep.client.compare..",
        "platekeep.client.join..",
        "platekeep.client.look..",
        "platekeep.client.partner..",
        "platekeep.client.paper..",
        "platekeep.client.series..",
        "platekeep.client.carry..",
        "platekeep.client.sheet..",
        "platekeep.client.settings.."
    };
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(CLIENT);

    @Test
    void theRulesSeeTheWholeClient() {
        assertThat(CLASSES.size())
                .as("imported classes; fewer means that the rules below look past the client")
                .isGreaterThan(150);
    }

    @Test
    void onlyOnePackageKnowsJGit() {
        holds(noClasses()
                .that()
                .resideOutsideOfPackage("platekeep.client.git..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.eclipse.jgit..")
                .because("all others speak of plates, versions and hands, and are tested without it"));
    }

    @Test
    void thePortShowsNoMachinery() {
        holds(noClasses()
                .that()
                .resideInAPackage("platekeep.client.library..")
                .should()
                .dependOnClassesThat(resideInAnyPackage("platekeep.client..")
                        .and(com.tngtech.archunit.base.DescribedPredicate.not(
                                resideInAnyPackage("platekeep.client.library..", "platekeep.client.task.."))))
                .orShould()
                .dependOnClassesThat()
                .resideInAnyPackage("java.awt..", "javax.swing..")
                .because("screens and commands are written against it, whatever fulfils it"));
    }

    @Test
    void theLibraryUnderneathSeesNoScreenAndNoCommand() {
        holds(noClasses()
                .that()
                .resideInAnyPackage("platekeep.client.git..", "platekeep.client.cache..")
                .should()
                .dependOnClassesThat(resideInAnyPackage(SCREENS)
                        .or(resideInAnyPackage("platekeep.client.ui..", "platekeep.client.command..", CLIENT)))
                .because("what keeps plates must not know how they are shown"));
    }

    @Test
    void commandsUseThePortAndTheModelOnly() {
        holds(noClasses()
                .that()
                .resideInAPackage("platekeep.client.command..")
                .should()
                .dependOnClassesThat(resideInAnyPackage(SCREENS)
                        .or(resideInAnyPackage(
                                "platekeep.client.git..",
                                "platekeep.client.cache..",
                                "platekeep.client.ui..",
                                "java.awt..",
                                "javax.swing..",
                                "com.formdev..")))
                .because("a command must answer at once and without a display"));
    }

    @Test
    void screensUseThePortAndTheModelOnly() {
        holds(noClasses()
                .that()
                .resideInAnyPackage(SCREENS)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("platekeep.client.git..", "platekeep.client.command..", CLIENT)
                .because("a screen is handed what it needs by its constructor"));
    }

    @Test
    void nobodySeesTheRoot() {
        holds(noClasses()
                .that()
                .resideOutsideOfPackage(CLIENT)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(CLIENT)
                .because("the root puts the parts together, so it stands above all of them"));
    }

    @Test
    void threadsStartInOnePackage() {
        holds(noClasses()
                .that()
                .resideOutsideOfPackage("platekeep.client.task..")
                .should()
                .callConstructor(Thread.class, Runnable.class)
                .orShould()
                .callConstructor(Thread.class, Runnable.class, String.class)
                .orShould()
                .dependOnClassesThat()
                .haveNameMatching("java\\.util\\.concurrent\\.(Executors|ForkJoinPool)")
                .orShould()
                .callMethodWhere(target(nameMatching("(supply|run|thenApply|thenRun|thenAccept)Async")))
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("javax.swing.SwingWorker")
                .orShould()
                .callMethod("javax.swing.SwingUtilities", "invokeLater", "java.lang.Runnable")
                .orShould()
                .callMethod("javax.swing.SwingUtilities", "invokeAndWait", "java.lang.Runnable")
                .orShould()
                .callMethod("java.awt.EventQueue", "invokeLater", "java.lang.Runnable")
                .orShould()
                .callMethod("java.awt.EventQueue", "invokeAndWait", "java.lang.Runnable")
                .because("what runs beside the window can be waited for and cancelled in one place only"));
    }

    @Test
    void onlyCommandsPrint() {
        holds(noClasses()
                .that()
                .resideOutsideOfPackages("platekeep.client.command..")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .callMethod(Throwable.class, "printStackTrace")
                .because("a user reads sentences; everything else goes to the log"));
    }

    @Test
    void noComponentReachesTheLibrary() {
        holds(noClasses()
                .that()
                .areAssignableTo(java.awt.Component.class)
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("platekeep.client.library.Library")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("platekeep.client.library.Libraries")
                .because("every call to a library may touch the disk, and components live on the event thread"));
    }

    @Test
    void presentersKnowNoSwing() {
        holds(noClasses()
                .that()
                .haveSimpleNameEndingWith("Presenter")
                .or()
                .haveSimpleNameEndingWith("State")
                .or()
                .haveSimpleNameEndingWith("View")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("javax.swing..", "java.awt..")
                .because("what a screen does is tested without a display"));
    }

    @Test
    void packagesFormNoCircle() {
        holds(slices().matching("platekeep.client.(**)")
                .should()
                .beFreeOfCycles()
                .because("a package can be read and tested without those that build on it"));
    }

    @Test
    void packagesAreNamedForTheWork() {
        holds(noClasses()
                .should()
                .resideInAnyPackage("..util..", "..utils..", "..common..", "..impl..", "..manager..", "..helper..")
                .because("such a name says nothing, so everything ends up there"));
    }

    @Test
    void everyPackageSaysWhatItIs() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            List<Path> bare = files.filter(file -> file.toString().endsWith(".java"))
                    .map(Path::getParent)
                    .distinct()
                    .filter(folder -> !Files.exists(folder.resolve("package-info.java")))
                    .toList();
            assertThat(bare).isEmpty();
        }
    }

    private static void holds(ArchRule rule) {
        rule.check(CLASSES);
    }
}
