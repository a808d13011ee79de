package haftline.edit;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.measure.Measured;
import haftline.set.FileSettings;
import haftline.set.HandleSet;
import haftline.set.TemplateSettings;
import haftline.set.Workshop;
import haftline.shape.Shape;
import haftline.store.AtomicSave;
import haftline.store.DocumentException;
import haftline.store.LoadedSet;
import haftline.store.SetFile;
import haftline.store.Starter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SavingTest {
    @TempDir Path folder;
    private Path file;
    private OpenDocument document;
    private Map<Path, String> before;
    private final Locale usual = Locale.getDefault();

    @BeforeEach
    void open() {
        Locale.setDefault(Locale.GERMANY);
        file = DemoSet.copyTo(folder);
        before = texts();
        document = OpenDocument.of(DemoSet.read(file));
    }

    @AfterEach
    void putLocaleBack() {
        Locale.setDefault(usual);
    }

    private Map<Path, String> texts() {
        Map<Path, String> texts = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder, FileVisitOption.FOLLOW_LINKS)) {
            for (Path each : all.filter(Files::isRegularFile).toList()) {
                texts.put(folder.relativize(each), Files.readString(each));
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return texts;
    }

    /** Files of which the text differs from before, backups aside. */
    private List<String> changed() {
        return texts().entrySet().stream()
                .filter(entry -> !entry.getValue().equals(before.get(entry.getKey())))
                .map(entry -> entry.getKey().toString())
                .filter(name -> !name.endsWith("~"))
                .toList();
    }

    private NodeEdits edits(String piece, Scope scope) {
        return new NodeEdits(document.worked(piece).figures().orElseThrow().handle(), scope);
    }

    private void move(String piece, Scope scope, double mm) {
        assertThat(
                        document.apply(
                                        edits(piece, scope)
                                                .move(
                                                        "waist",
                                                        OptionalDouble.empty(),
                                                        OptionalDouble.of(mm)))
                                .isDone())
                .isTrue();
    }

    private void savedAndReadBack() {
        assertThat(document.save()).isInstanceOf(SaveResult.Saved.class);
        readBack(document.file().orElseThrow());
    }

    private void readBack(Path from) {
        HandleSet again = DemoSet.read(from).set();
        HandleSet mine = document.draft().set();
        assertThat(again.pieces()).isEqualTo(mine.pieces());
        assertThat(again.shape()).isEqualTo(mine.shape());
        assertThat(again.parts()).isEqualTo(mine.parts());
        assertThat(again.rules()).isEqualTo(mine.rules());
        assertThat(again.workshop()).isEqualTo(mine.workshop());
        assertThat(again.rack().drills()).isEqualTo(mine.rack().drills());
        assertThat(again.common()).isEqualTo(mine.common());
        assertThat(document.isModified()).isFalse();
        assertThat(document.changedOnDisk()).isEmpty();
    }

    @Test
    void aMovedNodeOfOnePieceIsWrittenInTheSetAlone() {
        move("butter spreader", Scope.THIS_PIECE, 17.5);
        assertThat(document.filesToSave()).containsExactly(file);
        savedAndReadBack();
        assertThat(changed()).containsExactly("profiles/sets/tidewater.yaml");
        assertThat(AtomicSave.backup(file)).hasContent(before.get(folder.relativize(file)));
        assertThat(texts().get(folder.relativize(file)))
                .contains("# Held common, so that the four read as one family.")
                .contains("17.5");
    }

    @Test
    void readingsAreWrittenInThePartsFile() {
        KitSize bore =
                KitSizes.of(document.brief("shucker").kit()).stream()
                        .filter(size -> size.words().equals("ferrule bore"))
                        .findFirst()
                        .orElseThrow();
        Measured old = bore.read().apply(document.brief("shucker").kit()).orElseThrow();
        document.apply(PartsEdits.reading("shucker", bore, Optional.of(old.plus(0.02))));
        savedAndReadBack();
        assertThat(changed()).contains("shared/parts/tidewater.yaml");
        assertThat(changed()).allMatch(name -> !name.contains("shapes"));
    }

    @Test
    void theSharedShapeIsWrittenOnlyWhereItWasEdited() {
        move("butter spreader", Scope.ALL_PIECES, 17.5);
        savedAndReadBack();
        assertThat(changed()).contains("profiles/shapes/waisted.yaml");
        assertThat(changed()).allMatch(name -> !name.contains("parts"));
    }

    @Test
    void anEditedOwnShapeNeverChangesTheFileThatOthersShare() {
        document.apply(edits("shucker", Scope.THIS_PIECE).add(50, 25));
        document.apply(edits("seafood fork", Scope.THIS_PIECE).add(50, 18));
        savedAndReadBack();
        assertThat(changed())
                .containsExactlyInAnyOrder(
                        "profiles/sets/tidewater.yaml",
                        "profiles/sets/tidewater-shucker-shape.yaml",
                        "profiles/sets/tidewater-seafood-fork-shape.yaml");
        before = texts();
        document.apply(edits("shucker", Scope.THIS_PIECE).add(60, 25));
        savedAndReadBack();
        assertThat(changed()).containsExactly("profiles/sets/tidewater-shucker-shape.yaml");
        before = texts();
        document = OpenDocument.of(DemoSet.read(file));
        document.apply(edits("shucker", Scope.THIS_PIECE).add(70, 25));
        savedAndReadBack();
        assertThat(changed()).containsExactly("profiles/sets/tidewater-shucker-shape.yaml");
    }

    @Test
    void aCopyKeepsItsShapeWhenTheOriginalIsEdited() {
        document.apply(edits("shucker", Scope.THIS_PIECE).add(50, 25));
        savedAndReadBack();
        document = OpenDocument.of(DemoSet.read(file));
        document.apply(PieceEdits.copy("shucker"));
        document.apply(edits("shucker", Scope.THIS_PIECE).add(60, 25));
        Shape copys = document.draft().shape("shucker 2");
        savedAndReadBack();
        assertThat(document.draft().shape("shucker 2")).isEqualTo(copys);
        assertThat(DemoSet.read(file).set().piece("shucker 2").orElseThrow().shape())
                .contains(copys);
    }

    @Test
    void namesThatMakeOneFileNameDoNotShareAFile() {
        document.apply(PieceEdits.copy("shucker"));
        document.apply(PieceEdits.rename("shucker", "my piece"));
        document.apply(PieceEdits.rename("shucker 2", "my-piece"));
        document.apply(edits("my piece", Scope.THIS_PIECE).add(50, 25));
        document.apply(edits("my-piece", Scope.THIS_PIECE).add(60, 25));
        savedAndReadBack();
        document.apply(edits("my-piece", Scope.THIS_PIECE).add(70, 25));
        savedAndReadBack();
    }

    @Test
    void savedUnderANewNameItLeavesTheOldSetAlone() throws IOException {
        move("butter spreader", Scope.ALL_PIECES, 17.5);
        document.apply(edits("shucker", Scope.THIS_PIECE).add(50, 25));
        KitSize length = KitSizes.of(document.brief("shucker").kit()).get(0);
        document.apply(PartsEdits.reading("shucker", length, Optional.of(Measured.exactly(80))));
        Path there = Files.createDirectories(folder.resolve("else where")).resolve("mine.yaml");
        assertThat(document.saveAs(there)).isInstanceOf(SaveResult.Saved.class);
        readBack(there);
        assertThat(DemoSet.read(there).set().workshop()).isNotEqualTo(Workshop.COMMON_PRACTICE);
        assertThat(changed())
                .containsExactlyInAnyOrder(
                        "else where/mine.yaml",
                        "else where/mine-parts.yaml",
                        "else where/mine-shape.yaml",
                        "else where/mine-shucker-shape.yaml");
        before = texts();
        document.undo();
        document.undo();
        savedAndReadBack();
        assertThat(changed())
                .containsExactlyInAnyOrder("else where/mine.yaml", "else where/mine-parts.yaml");
        assertThat(document.isModified()).isFalse();
        document.redo();
        assertThat(document.isModified()).isTrue();
    }

    @Test
    void aNewSetWritesAllThatItNeeds() {
        LoadedSet demo = DemoSet.load();
        OpenDocument fresh = OpenDocument.unsaved(NewSet.in(folder.resolve("empty"), demo));
        document = fresh;
        assertThat(fresh.save()).isEqualTo(new SaveResult.NeedsName());
        Path to = folder.resolve("fresh.yaml");
        assertThat(fresh.saveAs(to)).isInstanceOf(SaveResult.Saved.class);
        readBack(to);
        assertThat(changed())
                .containsExactlyInAnyOrder("fresh.yaml", "fresh-parts.yaml", "fresh-shape.yaml");
        before = texts();
        savedAndReadBack();
        assertThat(changed()).isEmpty();
    }

    @Test
    void aNewSetMadeFromTheProgramsOwnHasAWorkshopOfItsOwn() throws DocumentException {
        LoadedSet shown = SetFile.read(Starter.set());
        OpenDocument fresh = OpenDocument.unsaved(NewSet.in(folder, shown));
        Path to = folder.resolve("fresh.yaml");
        assertThat(fresh.saveAs(to)).isInstanceOf(SaveResult.Saved.class);
        LoadedSet read = DemoSet.read(to);
        assertThat(read.references().workshop()).contains("fresh-workshop.yaml");
        assertThat(read.set().workshop()).isEqualTo(shown.set().workshop());
    }

    @Test
    void theProgramsOwnSetIsSavedWithAllThatItNeeds() throws DocumentException {
        OpenDocument shown = OpenDocument.unsaved(SetFile.read(Starter.set()));
        Path to = folder.resolve("mine.yaml");
        assertThat(shown.saveAs(to)).isInstanceOf(SaveResult.Saved.class);
        document = shown;
        readBack(to);
        LoadedSet read = DemoSet.read(to);
        assertThat(read.references().parts()).isEqualTo("mine-parts.yaml");
        assertThat(read.references().shape()).isEqualTo("mine-shape.yaml");
        assertThat(read.references().workshop()).contains("mine-workshop.yaml");
        assertThat(read.references().pieceShapes().values())
                .containsExactly("mine-seafood-fork-shape.yaml");
        shown.apply(KitEdits.rename("fork", "oyster fork"));
        assertThat(shown.save()).isInstanceOf(SaveResult.Saved.class);
        readBack(to);
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.filter(file -> file.toString().matches(".*mine.*yaml"))).hasSize(5);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void aNewSetBesideAnotherNamesItsWorkshopByTheWayFromThere() {
        LoadedSet demo = DemoSet.read(file);
        Path beside = demo.file().getParent();
        OpenDocument fresh = OpenDocument.unsaved(NewSet.in(beside, demo));
        assertThat(fresh.saveAs(beside.resolve("spike.yaml"))).isInstanceOf(SaveResult.Saved.class);
        assertThat(DemoSet.read(beside.resolve("spike.yaml")).references().workshop())
                .contains("../../shared/workshop-tidewater.yaml");
        Path other = folder.resolve("other.yaml");
        OpenDocument elsewhere = OpenDocument.unsaved(NewSet.in(beside, demo));
        assertThat(elsewhere.saveAs(other)).isInstanceOf(SaveResult.Saved.class);
        assertThat(DemoSet.read(other).references().workshop())
                .contains("shared/workshop-tidewater.yaml");
    }

    private static Command laser(double kerfMm) {
        return WorkshopEdits.templates(
                "cut with laser",
                t ->
                        t.withCutting(
                                new TemplateSettings.Cutting(
                                        TemplateSettings.Tool.LASER, kerfMm, 3.175, false)));
    }

    @Test
    void aSettingOfTheWorkshopIsWrittenInTheFileThatTheSetNames() {
        document.apply(laser(0.21));
        document.apply(WorkshopEdits.files("print on A3", f -> f.withPaper(FileSettings.Paper.A3)));
        savedAndReadBack();
        assertThat(changed()).containsExactly("shared/workshop-tidewater.yaml");
        assertThat(texts().get(Path.of("shared/workshop-tidewater.yaml")))
                .contains("kerf: 0.21")
                .contains("paper: A3")
                .contains("# a bandsaw takes 1 to 1.5 mm");
        document.undo();
        document.undo();
        savedAndReadBack();
    }

    @Test
    void aSetThatNamesNoWorkshopGetsAFileOfItsOwn() throws IOException {
        String text = Files.readString(file);
        Files.writeString(file, text.replaceFirst("(?m)^workshop:.*\n", ""));
        document = OpenDocument.of(DemoSet.read(file));
        before = texts();
        document.apply(laser(0.21));
        savedAndReadBack();
        assertThat(changed())
                .containsExactlyInAnyOrder(
                        "profiles/sets/tidewater.yaml", "profiles/sets/tidewater-workshop.yaml");
        before = texts();
        document.apply(laser(0.22));
        savedAndReadBack();
        assertThat(changed()).containsExactly("profiles/sets/tidewater-workshop.yaml");
        document.undo();
        document.undo();
        savedAndReadBack();
        assertThat(Files.readString(file)).doesNotContain("workshop:");
    }

    private static Command nose(double mm) {
        return RulesEdits.copying(
                "nose",
                c -> new haftline.handle.Rules.Copying(mm, c.followerMm(), c.steepestDeg()));
    }

    @Test
    void aRuleIsWrittenInTheFileThatTheSetNamesAndGoesAlongUnderANewName() throws IOException {
        document.apply(nose(2.25));
        savedAndReadBack();
        assertThat(changed()).containsExactly("shared/rules.yaml");
        assertThat(texts().get(Path.of("shared/rules.yaml")))
                .contains("nose: 2.25")
                .contains("# degrees from the axis");
        before = texts();
        document.apply(nose(2.5));
        Path there = Files.createDirectories(folder.resolve("else")).resolve("mine.yaml");
        assertThat(document.saveAs(there)).isInstanceOf(SaveResult.Saved.class);
        readBack(there);
        assertThat(changed()).containsExactlyInAnyOrder("else/mine.yaml", "else/mine-rules.yaml");
        before = texts();
        document.apply(nose(3));
        savedAndReadBack();
        assertThat(changed()).containsExactly("else/mine-rules.yaml");
    }

    @Test
    void aSetThatNamesNoRulesGetsAFileOfItsOwn() throws IOException {
        Files.writeString(file, Files.readString(file).replaceFirst("(?m)^rules:.*\n", ""));
        document = OpenDocument.of(DemoSet.read(file));
        before = texts();
        document.apply(nose(2.25));
        savedAndReadBack();
        assertThat(changed())
                .containsExactlyInAnyOrder(
                        "profiles/sets/tidewater.yaml", "profiles/sets/tidewater-rules.yaml");
    }

    @Test
    void aChangedWorkshopGoesAlongUnderANewNameAndTheOldOneStays() throws IOException {
        document.apply(laser(0.21));
        Path there = Files.createDirectories(folder.resolve("else")).resolve("mine.yaml");
        assertThat(document.saveAs(there)).isInstanceOf(SaveResult.Saved.class);
        readBack(there);
        assertThat(changed())
                .containsExactlyInAnyOrder("else/mine.yaml", "else/mine-workshop.yaml");
        before = texts();
        document.apply(laser(0.23));
        savedAndReadBack();
        assertThat(changed()).containsExactly("else/mine-workshop.yaml");
    }

    @Test
    void aForeignFileOfTheSameNameIsNotWrittenOver() throws IOException {
        Path foreign = file.resolveSibling("tidewater-shucker-shape.yaml");
        Files.writeString(foreign, "someone else's\n");
        document.apply(edits("shucker", Scope.THIS_PIECE).add(50, 25));
        savedAndReadBack();
        assertThat(foreign).hasContent("someone else's");
    }

    @Test
    void aTakenShapeDoesNotWriteOverTheOneBefore() {
        Shape chamfered = document.draft().shape("seafood fork");
        document.apply(
                new ShapeEdits("shucker", Scope.ALL_PIECES)
                        .take(chamfered, "../shapes/waisted-chamfered.yaml"));
        savedAndReadBack();
        assertThat(changed()).containsExactly("profiles/sets/tidewater.yaml");
        document.apply(edits("seafood fork", Scope.THIS_PIECE).add(50, 18));
        document.apply(new ShapeEdits("seafood fork", Scope.ALL_PIECES).makeCommon());
        savedAndReadBack();
        assertThat(changed()).noneMatch(name -> name.contains("shapes/"));
    }

    @Test
    void aChangeByAnotherProgramIsNoticedAndNotWrittenOver() throws IOException {
        move("butter spreader", Scope.THIS_PIECE, 17.5);
        assertThat(document.changedOnDisk()).isEmpty();
        Path parts = folder.resolve("shared/parts/tidewater.yaml");
        Files.writeString(parts, Files.readString(parts) + "# more\n");
        assertThat(document.changedOnDisk()).containsExactly(parts);
        assertThat(document.save()).isEqualTo(new SaveResult.ChangedOnDisk(List.of(parts)));
        assertThat(document.isModified()).isTrue();
        document.keepMine();
        savedAndReadBack();
    }

    @Test
    void touchingAFileIsNoChange() throws IOException {
        Files.setLastModifiedTime(
                file, java.nio.file.attribute.FileTime.fromMillis(1_000_000_000_000L));
        assertThat(document.changedOnDisk()).isEmpty();
    }

    @Test
    void whatCannotBeWrittenStaysModified() throws IOException {
        move("butter spreader", Scope.THIS_PIECE, 17.5);
        Path nowhere = folder.resolve("no such folder").resolve("set.yaml");
        assertThat(document.saveAs(nowhere)).isInstanceOf(SaveResult.Failed.class);
        assertThat(document.isModified()).isTrue();
        assertThat(document.file()).contains(file);
        savedAndReadBack();
    }

    @Test
    void modifiedFollowsThePositionInHistory() {
        move("butter spreader", Scope.THIS_PIECE, 17.5);
        savedAndReadBack();
        document.undo();
        assertThat(document.isModified()).isTrue();
        document.redo();
        assertThat(document.isModified()).isFalse();
        document.undo();
        move("butter spreader", Scope.THIS_PIECE, 18);
        document.undo();
        assertThat(document.isModified()).isTrue();
    }
}
