package haftline.ui.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.edit.DemoSet;
import haftline.edit.OpenDocument;
import haftline.edit.SaveResult;
import haftline.measure.Units;
import haftline.set.FileSettings;
import haftline.set.TemplateSettings;
import haftline.set.TemplateSettings.Tool;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkshopModelTest {
    @TempDir Path folder;
    private Path file;
    private EditorModel editor;
    private WorkshopModel model;

    @BeforeEach
    void open() {
        file = DemoSet.copyTo(folder);
        editor = new EditorModel(OpenDocument.of(DemoSet.read(file)));
        model = WorkshopModel.ofTemplates(editor);
    }

    private Row row(String label) {
        return model.setting(label).orElseThrow().row();
    }

    private boolean applies(String label) {
        return model.setting(label).orElseThrow().applies().getAsBoolean();
    }

    private TemplateSettings now() {
        return editor.draft().value().set().workshop().templates();
    }

    @Test
    void theToolDecidesWhichFiguresAreAskedFor() {
        assertThat(applies("kerf")).isTrue();
        row("tool").enter("router");
        assertThat(now().cutting().tool()).isEqualTo(Tool.ROUTER);
        assertThat(applies("kerf")).isFalse();
        assertThat(applies("bit's diameter")).isTrue();
        assertThat(editor.status().value().undoName()).contains("cut with router");
        row("open square inside corners").enter("yes");
        assertThat(now().cutting().cornersRelieved()).isTrue();
        editor.undo();
        editor.undo();
        assertThat(row("tool").state().value().text()).isEqualTo("laser");
    }

    @Test
    void lengthsTakeEitherUnitAndAWrongEntryLeavesTheLastGoodValue() {
        row("kerf").enter("0,2");
        assertThat(now().cutting().kerfMm()).isEqualTo(0.2);
        row("kerf").enter("1/64 in");
        assertThat(now().cutting().kerfMm()).isCloseTo(0.396875, within(1e-12));
        for (String wrong : List.of("wide", "", "-0.1", "2.01", "1 in")) {
            row("kerf").enter(wrong);
            assertThat(row("kerf").state().value().wrong())
                    .as(wrong)
                    .contains("Expected a length from 0 to 2 mm");
            assertThat(now().cutting().kerfMm()).isCloseTo(0.396875, within(1e-12));
        }
        assertThat(editor.notice().value()).isEmpty();
        editor.units().set(Units.INCH);
        assertThat(row("kerf").state().value().text()).isEqualTo("0.0156 in");
        row("sheet's width").enter("24");
        assertThat(now().sheet().widthMm()).isCloseTo(609.6, within(1e-9));
    }

    @Test
    void whatOnlyTheWholeForbidsIsSaidWhereItWasTyped() {
        row("sheet's height").enter("30");
        row("margin").enter("20");
        assertThat(row("margin").state().value().wrong().orElseThrow())
                .contains("room inside the margins");
        assertThat(now().sheet().marginMm()).isEqualTo(2);
    }

    @Test
    void gaugesAndTheirFiguresGoTogether() {
        row("profile gauge").enter("no");
        assertThat(now().gauges().profile()).isFalse();
        assertThat(applies("profile bears on")).isFalse();
        assertThat(applies("slots wider by")).isTrue();
        row("on cards").enter("all on one");
        assertThat(now().gauges().cards()).isEqualTo(TemplateSettings.Gauges.Cards.ALL_ON_ONE);
        row("tenon, go and no-go").enter("0.1");
        assertThat(now().gauges().tenonToleranceMm()).isEqualTo(0.1);
    }

    @Test
    void mountingHolesComeAndGo() {
        List<TemplateSettings.Hole> two = now().copying().holes();
        row("mounting holes").enter("4");
        assertThat(now().copying().holes()).hasSize(4).doesNotHaveDuplicates();
        assertThat(applies("hole 4 from")).isTrue();
        assertThat(applies("hole 5 from")).isFalse();
        row("hole 4 beyond it").enter("-30 mm");
        assertThat(now().copying().holes().get(3).beyondMm()).isEqualTo(-30);
        row("mounting holes").enter("2");
        assertThat(now().copying().holes()).isEqualTo(two);
        row("mounting holes").enter("none");
        assertThat(now().copying().holes()).isEmpty();
        row("copying template").enter("no");
        assertThat(applies("mounting holes")).isFalse();
    }

    @Test
    void aPointedCutterNeedNotBeSaid() {
        assertThat(applies("flank's clearance")).isFalse();
        row("pointed cutter").enter("55");
        assertThat(now().copying().cutterAngleDeg()).hasValue(55);
        assertThat(applies("flank's clearance")).isTrue();
        row("pointed cutter").enter("5");
        assertThat(row("pointed cutter").state().value().wrong()).isPresent();
        assertThat(now().copying().cutterAngleDeg()).hasValue(55);
        row("pointed cutter").enter("");
        assertThat(now().copying().cutterAngleDeg()).isEmpty();
    }

    @Test
    void everyRowThatIsChangedIsSavedAndReadBack() {
        row("tool").enter("router");
        row("bit's diameter").enter("1/8 in");
        row("gap between cards").enter("3/32 in");
        row("profile bears on").enter("the shoulder");
        row("written as").enter("outlines");
        row("sides").enter("full, to be turned");
        row("run off").enter("15");
        row("follower to cutter").enter("2");
        row("DXF files are for").enter("an old controller");
        row("paper").enter("Letter");
        row("bar along the long edge").enter("99.6");
        assertThat(editor.document().save()).isInstanceOf(SaveResult.Saved.class);
        var again = DemoSet.read(file).set().workshop();
        assertThat(again).isEqualTo(editor.draft().value().set().workshop());
        assertThat(again.files().printer()).isEqualTo(new FileSettings.Printer(100, 99.6));
        assertThat(again.templates().copying().radialRatio()).isEqualTo(2);
    }

    @Test
    void noseAndFollowerAreRulesAndSayWhereTheyAreSaved() {
        assertThat(row("cutter's nose").state().value().because())
                .contains("rules.yaml, which other sets may name too");
        row("cutter's nose").enter("1/8 in");
        row("follower").enter("4,5");
        var copying = editor.draft().value().set().rules().copying();
        assertThat(copying.noseMm()).isCloseTo(3.175, within(1e-12));
        assertThat(copying.followerMm()).isEqualTo(4.5);
        assertThat(row("follower").state().value().text()).isEqualTo("4.5 mm");
        row("follower").enter("31");
        assertThat(row("follower").state().value().wrong())
                .contains("Expected a length from 0 to 30 mm");
        assertThat(editor.document().save()).isInstanceOf(SaveResult.Saved.class);
        assertThat(DemoSet.read(file).set().rules().copying()).isEqualTo(copying);
        editor.undo();
        assertThat(row("follower").state().value().text()).isEqualTo("1.5 mm");
    }

    @Test
    void noTwoSettingsHaveOneLabel() {
        List<String> labels = new ArrayList<>();
        model.chapters()
                .forEach(chapter -> chapter.settings().forEach(s -> labels.add(s.row().label())));
        assertThat(labels).hasSizeGreaterThan(30).doesNotHaveDuplicates();
    }
}
