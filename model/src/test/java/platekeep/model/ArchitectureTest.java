package platekeep.model;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The rules of the model: pure Java, arrows one way. Each rule says why. */
class ArchitectureTest {
    private static final String ROOT = "platekeep.model.";
    private static final JavaClasses MODEL = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("platekeep.model");

    @Test
    void theRulesSeeTheWholeModel() {
        assertThat(MODEL.size())
                .as("imported classes; fewer means that the rules below look past the model")
                .isGreaterThan(100);
    }

    @Test
    void theModelTouchesNoDisk() {
        holds(noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.nio.file..", "java.net..", "java.util.zip..")
                .orShould()
                .dependOnClassesThat()
                .haveNameMatching("java\\.io\\.(File|RandomAccessFile).*")
                .because("a plate is computed with in memory: whoever reads and writes files handles their failures"));
    }

    @Test
    void theModelDrawsOnNoWindow() {
        holds(noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.awt..", "javax.swing..", "com.formdev..")
                .because("the same model serves the window, the command line and tests without a display"));
    }

    @Test
    void theModelKnowsNoGit() {
        holds(noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.eclipse.jgit..")
                .because("versions are the library's; comparing and joining need plates only"));
    }

    @Test
    void theModelStartsNoThread() {
        holds(noClasses()
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.lang.Thread")
                .orShould()
                .dependOnClassesThat()
                .resideInAnyPackage("java.util.concurrent")
                .because("its values are immutable, so the caller decides on which thread to compute"));
    }

    @Test
    void theModelAsksNoClockAndNoChance() {
        holds(noClasses()
                .should()
                .callMethod("java.time.LocalDate", "now")
                .orShould()
                .callMethod("java.time.Instant", "now")
                .orShould()
                .callMethod("java.time.ZonedDateTime", "now")
                .orShould()
                .callMethod("java.lang.System", "currentTimeMillis")
                .orShould()
                .callMethod("java.lang.System", "nanoTime")
                .orShould()
                .callMethod("java.util.UUID", "randomUUID")
                .orShould()
                .callMethod("java.lang.Math", "random")
                .because("the same plates give the same answer, byte for byte, whoever computes it and when"));
    }

    @Test
    void onlyTheTextPackageKnowsJackson() {
        holds(noClasses()
                .that()
                .resideOutsideOfPackage("platekeep.model.text..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("com.fasterxml..")
                .because("how a plate is written down must not show in what a plate is"));
    }

    @Test
    void oneClassKnowsLucene() {
        holds(noClasses()
                .that()
                .doNotHaveFullyQualifiedName("platekeep.model.find.words.Stems")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.apache.lucene..", "org.tartarus..")
                .because("only stems come from it, and a command that looks for no word must not load it"));
    }

    @Test
    void nothingIsPrinted() {
        holds(GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.because(
                "an answer is a value; only a command prints"));
    }

    @Test
    void arrowsGoOneWay() {
        onlyUses("plate");
        onlyUses("colour", "plate");
        onlyUses("text", "plate");
        onlyUses("stitch", "plate", "colour");
        onlyUses("compare", "plate", "text", "stitch");
        onlyUses("join", "plate", "text", "stitch", "compare");
        onlyUses("find", "plate", "text", "colour");
        onlyUses("look", "plate", "stitch");
        onlyUses("draw", "plate", "stitch", "compare", "join");
    }

    @Test
    void packagesFormNoCircle() {
        holds(slices().matching("platekeep.model.(**)")
                .should()
                .beFreeOfCycles()
                .because("a package can be read and tested without those that build on it"));
    }

    @Test
    void packagesAreNamedForTheTrade() {
        holds(noClasses()
                .should()
                .resideInAnyPackage("..util..", "..utils..", "..common..", "..impl..", "..manager..", "..helper..")
                .because("such a name says nothing, so everything ends up there"));
    }

    @Test
    void everyPackageSaysWhatItIs() throws IOException {
        assertThat(packagesWithoutInfo(Path.of("src/main/java"))).isEmpty();
    }

    private static List<String> packagesWithoutInfo(Path sources) throws IOException {
        try (Stream<Path> files = Files.walk(sources)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .map(Path::getParent)
                    .distinct()
                    .filter(folder -> !Files.exists(folder.resolve("package-info.java")))
                    .map(Path::toString)
                    .toList();
        }
    }

    /** Rooms that are not built yet have no arrows. */
    private static void onlyUses(String room, String... others) {
        String[] allowed = Stream.concat(Stream.of(room), Stream.of(others))
                .map(name -> ROOT + name + "..")
                .toArray(String[]::new);
        String[] rest = Stream.of("plate", "colour", "text", "stitch", "compare", "join", "find", "look", "draw")
                .map(name -> ROOT + name + "..")
                .filter(name -> !List.of(allowed).contains(name))
                .toArray(String[]::new);
        holds(classes()
                .that()
                .resideInAPackage(ROOT + room + "..")
                .should()
                .onlyDependOnClassesThat()
                .resideOutsideOfPackages(rest)
                .allowEmptyShould(
                        MODEL.stream().noneMatch(c -> c.getPackageName().startsWith(ROOT + room)))
                .because("whoever changes " + room + " must know by its arrows what can break"));
    }

    private static void holds(ArchRule rule) {
        rule.check(MODEL);
    }
}
