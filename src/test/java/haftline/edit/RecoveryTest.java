package haftline.edit;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.shape.Shape;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecoveryTest {
    @TempDir Path folder;
    private Path file;
    private Path journals;

    @BeforeEach
    void copy() {
        file = DemoSet.copyTo(folder.resolve("work"));
        journals = folder.resolve("recovery");
    }

    private static NodeEdits edits(OpenDocument document, String piece) {
        return new NodeEdits(
                document.worked(piece).figures().orElseThrow().handle(), Scope.THIS_PIECE);
    }

    @Test
    void afterAKillTheLastWholeStepIsOffered() throws Exception {
        Path printed = folder.resolve("printed.txt");
        Process child =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-cp",
                                System.getProperty("java.class.path"),
                                EditingChild.class.getName(),
                                file.toString(),
                                journals.toString())
                        .redirectError(ProcessBuilder.Redirect.INHERIT)
                        .redirectOutput(printed.toFile())
                        .start();
        try {
            while (child.isAlive() && Files.readAllLines(printed).size() < 12) {
                Thread.sleep(5);
            }
            assertThat(Recovery.left(journals)).as("while the process lives").isEmpty();
        } finally {
            child.destroyForcibly().waitFor();
        }
        List<String> lines = Files.readAllLines(printed);
        assertThat(lines).hasSizeGreaterThanOrEqualTo(12);
        // The last line may have been cut short.
        int last = Integer.parseInt(lines.get(lines.size() - 2));
        List<Recovery> left = Recovery.left(journals);
        assertThat(left).hasSize(1);
        assertThat(left.get(0).name()).isEqualTo("Tidewater");
        assertThat(left.get(0).file()).contains(file);
        OpenDocument recovered = left.get(0).open();
        double mm =
                recovered.draft().piece("butter spreader").choices().nodeDiametersMm().get("waist");
        // The two steps after it may have been written as well.
        assertThat(Math.round(mm * 10)).isBetween((long) last, (long) last + 2);
        assertThat(recovered.isModified()).isTrue();
        assertThat(recovered.save()).isInstanceOf(SaveResult.Saved.class);
        assertThat(
                        DemoSet.read(file)
                                .set()
                                .piece("butter spreader")
                                .orElseThrow()
                                .choices()
                                .nodeDiametersMm())
                .containsEntry("waist", mm);
        left.get(0).discard();
        assertThat(Recovery.left(journals)).isEmpty();
    }

    @Test
    void recoveredWorkIsWholeAndKnowsItsFiles() throws Exception {
        OpenDocument document = OpenDocument.of(DemoSet.read(file));
        Journal journal = Journal.in(journals);
        document.keepIn(journal);
        document.apply(edits(document, "shucker").add(50, 25));
        document.apply(PieceEdits.rename("seafood fork", "oyster fork"));
        document.apply(PieceEdits.copy("shucker"));
        document.apply(
                WorkshopEdits.templates(
                        "no copying template", t -> t.withCopying(t.copying().withMade(false))));
        document.apply(
                RulesEdits.copying(
                        "follower",
                        c -> new haftline.handle.Rules.Copying(c.noseMm(), 2.5, c.steepestDeg())));
        journal.settle();
        Draft mine = document.draft();
        Recovery left = copyOfLiveJournal();
        OpenDocument recovered = left.open();
        assertThat(recovered.draft().set().pieces()).isEqualTo(mine.set().pieces());
        assertThat(recovered.draft().set().parts()).isEqualTo(mine.set().parts());
        assertThat(recovered.draft().set().rules()).isEqualTo(mine.set().rules());
        assertThat(recovered.draft().set().workshop()).isEqualTo(mine.set().workshop());
        assertThat(recovered.draft().references()).isEqualTo(mine.references());
        assertThat(recovered.file()).contains(file);
        assertThat(recovered.filesToSave()).isEqualTo(document.filesToSave());
        Shape shared = mine.set().shape();
        assertThat(recovered.draft().set().shape()).isEqualTo(shared);
        document.close();
    }

    /** As a killed process would have left it, without its lock. */
    private Recovery copyOfLiveJournal() throws IOException {
        Path other = folder.resolve("left");
        try (var all = Files.walk(journals)) {
            for (Path each : all.filter(Files::isRegularFile).toList()) {
                Path to = other.resolve(journals.relativize(each).toString());
                Files.createDirectories(to.getParent());
                Files.copy(each, to);
            }
        }
        return Recovery.left(other).get(0);
    }

    @Test
    void nothingIsLeftWhereNothingIsUnsaved() throws Exception {
        OpenDocument document = OpenDocument.of(DemoSet.read(file));
        Journal journal = Journal.in(journals);
        document.keepIn(journal);
        document.apply(
                edits(document, "shucker")
                        .move("waist", OptionalDouble.empty(), OptionalDouble.of(22)));
        document.undo();
        journal.settle();
        try (var all = Files.walk(journals)) {
            assertThat(all.filter(path -> path.endsWith(Journal.SET))).isEmpty();
        }
        document.redo();
        journal.settle();
        try (var all = Files.walk(journals)) {
            assertThat(all.filter(path -> path.endsWith(Journal.SET))).hasSize(1);
        }
        document.save();
        journal.settle();
        try (var all = Files.walk(journals)) {
            assertThat(all.filter(path -> path.endsWith(Journal.SET))).isEmpty();
        }
        document.close();
        assertThat(journals).isEmptyDirectory();
    }

    @Test
    void aJournalThatCannotBeWrittenSaysSoAndHoldsNobodyUp() throws Exception {
        OpenDocument document = OpenDocument.of(DemoSet.read(file));
        Journal journal = Journal.in(journals);
        document.keepIn(journal);
        Journal.deleteAll(journals);
        Files.writeString(journals, "in the way");
        Outcome outcome =
                document.apply(
                        edits(document, "shucker")
                                .move("waist", OptionalDouble.empty(), OptionalDouble.of(22)));
        journal.settle();
        assertThat(outcome.isDone()).isTrue();
        assertThat(journal.problem()).isPresent();
        document.close();
    }

    @Test
    void spoiltOrHalfWrittenJournalsAreNotOffered() throws Exception {
        Path half = Files.createDirectories(journals.resolve("set-1").resolve("writing"));
        Files.writeString(half.resolve(Journal.SET), "haftline: 1\n");
        assertThat(Recovery.left(journals)).isEmpty();
        assertThat(Recovery.left(folder.resolve("no such folder"))).isEmpty();
    }
}
