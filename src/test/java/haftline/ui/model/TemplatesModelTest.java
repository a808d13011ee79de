package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.cli.Making;
import haftline.drawing.CardDrawing;
import haftline.drawing.Drawing;
import haftline.drawing.LetteringStyle;
import haftline.drawing.SheetDrawing;
import haftline.edit.Choice;
import haftline.edit.ChoiceEdits;
import haftline.edit.DemoSet;
import haftline.edit.OpenDocument;
import haftline.edit.PieceEdits;
import haftline.edit.Scope;
import haftline.edit.WorkshopEdits;
import haftline.findings.Gravity;
import haftline.measure.Units;
import haftline.set.TemplateSettings;
import haftline.template.CuttingTool;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TemplatesModelTest {
    @TempDir Path folder;
    private final Deque<Runnable> background = new ArrayDeque<>();
    private EditorModel editor;
    private TemplatesModel model;

    @BeforeEach
    void open() {
        editor = new EditorModel(OpenDocument.of(DemoSet.read(DemoSet.copyTo(folder))));
        // Few and small cards: what is tested is not how well they lie.
        editor.run(PieceEdits.remove("citrus zester"));
        editor.run(PieceEdits.remove("seafood fork"));
        change(
                t ->
                        t.withGauges(t.gauges().withMade(true, false, false))
                                .withCopying(t.copying().withMade(false)));
        model = new TemplatesModel(editor, background::add, Runnable::run);
    }

    private void change(java.util.function.UnaryOperator<TemplateSettings> change) {
        editor.run(WorkshopEdits.templates("change", change));
    }

    private void laser(double kerfMm) {
        change(
                t ->
                        t.withCutting(
                                new TemplateSettings.Cutting(
                                        TemplateSettings.Tool.LASER, kerfMm, 3, false)));
    }

    private void work() {
        while (!background.isEmpty()) {
            background.remove().run();
        }
    }

    private LaidOut laid() {
        return model.laidOut().value().orElseThrow();
    }

    @Test
    void nothingIsLaidOutBeforeItIsToBeSeen() {
        laser(0.3);
        assertThat(background).isEmpty();
        model.show(true);
        assertThat(background).hasSize(1);
        assertThat(model.working().value()).isTrue();
        work();
        assertThat(model.working().value()).isFalse();
        assertThat(laid().cards()).isEqualTo(2);
        model.show(false);
        laser(0.4);
        assertThat(background).isEmpty();
    }

    @Test
    void showsTheSheetsThatTheMainCommandMakes() throws Exception {
        model.show(true);
        work();
        TemplateSettings settings = laid().asked().settings();
        List<Drawing> shown =
                SheetDrawing.of(
                        laid().asked().set() + ", templates",
                        laid().layout(),
                        new CardDrawing(LetteringStyle.of(settings.lettering())),
                        CuttingTool.of(settings.cutting()).note(),
                        Units.MM);
        List<Drawing> made =
                Making.plan(editor.document().loaded(), Units.MM)
                        .ofTemplates(Set.of("dxf"))
                        .stream()
                        .map(file -> file.drawing().orElseThrow().get())
                        .toList();
        assertThat(shown).isEqualTo(made);
    }

    @Test
    void aChangeBreaksOffWhatIsUnderWayAndTheLastPictureStays() {
        model.show(true);
        work();
        LaidOut first = laid();
        laser(0.3);
        laser(0.5);
        assertThat(background).hasSize(2);
        background.remove().run();
        assertThat(laid()).isSameAs(first);
        assertThat(model.working().value()).isTrue();
        work();
        assertThat(model.working().value()).isFalse();
        assertThat(laid().asked().settings().cutting().kerfMm()).isEqualTo(0.5);
        double grown = area(laid()) - area(first);
        assertThat(grown).isPositive();
        editor.undo();
        editor.undo();
        work();
        assertThat(laid()).isEqualTo(first);
    }

    private static double area(LaidOut laid) {
        return laid.layout().sheets().stream().mapToDouble(sheet -> sheet.cardsArea()).sum();
    }

    @Test
    void whatChangesNoCardIsNotLaidOutAnew() {
        model.show(true);
        work();
        editor.run(
                WorkshopEdits.files(
                        "DXF for drawing", f -> f.withDxf(haftline.set.FileSettings.Dxf.DRAWING)));
        editor.choose("butter spreader");
        assertThat(background).isEmpty();
    }

    @Test
    void aSheetAsLargeAsThePaperLeaves_followsThePaper() {
        model.show(true);
        work();
        editor.run(
                WorkshopEdits.files(
                        "print on A3", f -> f.withPaper(haftline.set.FileSettings.Paper.A3)));
        work();
        assertThat(laid().asked().settings().sheet().widthMm()).isEqualTo(400);
        editor.undo();
        work();
        assertThat(laid().asked().settings().sheet().widthMm()).isEqualTo(277);
    }

    @Test
    void aFindingLeadsToItsCard() {
        change(
                t ->
                        t.withCutting(
                                        new TemplateSettings.Cutting(
                                                TemplateSettings.Tool.ROUTER, 0.15, 6, false))
                                .withSheet(new TemplateSettings.Sheet(200, 55, 2, 3, 3)));
        model.show(true);
        work();
        assertThat(laid().sheets()).hasSize(2);
        LaidOut.Remark remark =
                laid().remarks().stream().filter(r -> r.sheet() == 1).findFirst().orElseThrow();
        model.choose(Optional.of(remark));
        assertThat(model.sheet().value()).isEqualTo(1);
        assertThat(remark.finding().subject()).contains(remark.card().orElseThrow().name());
        model.turn(5);
        assertThat(model.sheet().value()).isEqualTo(1);
        model.turn(-1);
        assertThat(model.sheet().value()).isZero();
    }

    @Test
    void whatDoesNotFitIsSaidFirst() {
        change(t -> t.withSheet(new TemplateSettings.Sheet(60, 60, 2, 3, 3)));
        model.show(true);
        work();
        assertThat(laid().sheets()).isEmpty();
        assertThat(laid().remarks().get(0).finding().gravity()).isEqualTo(Gravity.STOP);
        assertThat(laid().remarks().get(0).sheet()).isNegative();
        assertThat(model.use()).isEqualTo("No card fits on the sheet");
    }

    @Test
    void saysWhatTheToolDoesInTheUnitsOfTheScreen() {
        laser(0.2);
        assertThat(model.toolNote()).contains("0.2 mm").contains("outside");
        editor.units().set(Units.INCH);
        assertThat(model.toolNote()).contains("0.0079 in");
    }

    @Test
    void lettersCardsInTheUnitsOfTheScreen() {
        model.show(true);
        work();
        editor.units().set(Units.INCH);
        work();
        assertThat(laid().asked().units()).isEqualTo(Units.INCH);
        assertThat(laid().sheets().get(0).get(0).drawing().toString()).contains(" in");
    }

    @Test
    void whereNoPieceCanBeDrawnItIsSaidWhy() {
        editor.run(PieceEdits.remove("butter spreader"));
        editor.run(
                new ChoiceEdits("shucker", Scope.THIS_PIECE)
                        .choose(Choice.LENGTH_RATIO, b -> b.lengthRatio(0.2)));
        model.show(true);
        work();
        assertThat(model.use()).contains("shucker cannot be drawn").doesNotContain("choose");
    }
}
