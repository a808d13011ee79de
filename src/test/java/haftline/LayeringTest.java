package haftline;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The order of the house: DEVELOPERS.md, "The map of the house". */
class LayeringTest {
    /** A package uses only packages that stand before it in this list. */
    private static final List<String> ORDER =
            List.of(
                    "measure",
                    "curve",
                    "parts",
                    "stock",
                    "shape",
                    "handle",
                    "figures",
                    "findings",
                    "set",
                    "adjust",
                    "template",
                    "drawing",
                    "write",
                    "sheet",
                    "store",
                    "edit",
                    "cli",
                    "ui");

    private static final JavaClasses HOUSE =
            new ClassFileImporter()
                    .withImportOption(new ImportOption.DoNotIncludeTests())
                    .importPackages("haftline");

    static Stream<String> rooms() {
        return ORDER.stream();
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void usesOnlyPackagesAboveIt(String room) {
        String[] below =
                ORDER.subList(ORDER.indexOf(room) + 1, ORDER.size()).stream()
                        .map(name -> "haftline." + name + "..")
                        .toArray(String[]::new);
        if (below.length > 0) {
            check(
                    noClasses()
                            .that()
                            .resideInAPackage("haftline." + room + "..")
                            .should()
                            .dependOnClassesThat()
                            .resideInAnyPackage(below));
        }
    }

    @Test
    void everyRoomIsInTheList() {
        HOUSE.forEach(
                type -> {
                    String room =
                            type.getPackageName().replaceFirst("^haftline\\.?", "").split("\\.")[0];
                    Assertions.assertThat(ORDER).as(type.getName()).contains(room);
                });
    }

    @Test
    void hasNoCycles() {
        slices().matching("haftline.(*)..").should().beFreeOfCycles().check(HOUSE);
        slices().matching("haftline.write.(*)..")
                .should()
                .beFreeOfCycles()
                .allowEmptyShould(true)
                .check(HOUSE);
    }

    @Test
    void geometryKnowsNoLibraryNoFileNoScreen() {
        check(
                noClasses()
                        .that()
                        .resideInAPackage("haftline.curve..")
                        .should()
                        .dependOnClassesThat()
                        .resideOutsideOfPackages(
                                "haftline.curve..",
                                "haftline.measure..",
                                "java.lang..",
                                "java.util..")
                        .because("curve must be usable, and testable, without anything else"));
    }

    @Test
    void keepsEachLibraryInItsRoom() {
        only("org.locationtech..", "template");
        only("org.snakeyaml..", "store");
        only("org.apache.commons.csv..", "stock", "write", "store", "cli");
        only("org.apache.batik..", "store");
        only("com.fasterxml..", "cli", "store");
        only("picocli..", "cli");
        only("javafx..", "ui");
        check(
                noClasses()
                        .that()
                        .resideInAPackage("haftline.ui.model..")
                        .should()
                        .dependOnClassesThat()
                        .resideInAPackage("javafx..")
                        .because("view models are tested without a toolkit"));
        only("org.apache.pdfbox..", "write");
        only("org.apache.commons.math3..", "measure", "figures", "set", "adjust");
    }

    private static void only(String library, String... rooms) {
        String[] packages =
                Stream.of(rooms).map(room -> "haftline." + room + "..").toArray(String[]::new);
        check(
                noClasses()
                        .that()
                        .resideOutsideOfPackages(packages)
                        .should()
                        .dependOnClassesThat()
                        .resideInAPackage(library));
    }

    @Test
    void printsOnlyFromTheCommandLine() {
        check(
                noClasses()
                        .that()
                        .resideOutsideOfPackage("haftline.cli..")
                        .should()
                        .accessField(System.class, "out")
                        .orShould()
                        .accessField(System.class, "err"));
    }

    @Test
    void everyPackageSaysWhatItIsFor() throws Exception {
        try (Stream<Path> folders = Files.walk(Path.of("src/main/java/haftline"))) {
            Assertions.assertThat(
                            folders.filter(Files::isDirectory).filter(LayeringTest::holdsJava))
                    .isNotEmpty()
                    .allSatisfy(
                            folder ->
                                    Assertions.assertThat(folder.resolve("package-info.java"))
                                            .exists());
        }
    }

    private static boolean holdsJava(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.anyMatch(file -> file.toString().endsWith(".java"));
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static void check(ArchRule rule) {
        rule.allowEmptyShould(true).check(HOUSE);
    }
}
