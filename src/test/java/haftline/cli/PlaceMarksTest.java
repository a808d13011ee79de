package haftline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.drawing.Drawing;
import haftline.drawing.Element;
import haftline.drawing.Group;
import haftline.drawing.Text;
import haftline.findings.Gravity;
import haftline.measure.Units;
import haftline.sheet.Remark;
import haftline.sheet.SheetPiece;
import haftline.sheet.page.SheetFigures;
import haftline.store.SetFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The signs of findings on the lathe sheet's section, which is drawn at full size here. */
class PlaceMarksTest {
    private static final double WIDTH_MM = 190;

    private static SheetPiece shucker() throws Exception {
        ExaminedSet set = Examination.of(SetFile.read(Path.of(Run.DEMO)), Units.MM);
        return Sheets.source(set, set.pieces().get(0)).orElseThrow();
    }

    private static List<Text> signs(SheetPiece piece, Remark... remarks) {
        SheetPiece other =
                new SheetPiece(
                        piece.set(),
                        piece.batch(),
                        piece.figures(),
                        piece.speeds(),
                        piece.mixedMorePercent(),
                        List.of(remarks));
        Drawing section = SheetFigures.section(other, Units.MM, WIDTH_MM, 1);
        return section.groups().stream()
                .map(Group::elements)
                .flatMap(List<Element>::stream)
                .filter(Text.class::isInstance)
                .map(Text.class::cast)
                .filter(text -> "■▲○".contains(text.string()))
                .toList();
    }

    private static Remark at(Gravity gravity, double x) {
        return new Remark(gravity, "something", OptionalDouble.of(x), Optional.empty());
    }

    @Test
    void aSignStandsUnderThePlaceOfItsFinding() throws Exception {
        List<Text> signs = signs(shucker(), at(Gravity.STOP, 9), at(Gravity.WARN, 39));
        assertThat(signs).extracting(Text::string).containsExactly("■", "▲");
        assertThat(signs.get(1).position().xMm() - signs.get(0).position().xMm())
                .isCloseTo(30, within(1e-9));
        // Where the wood is some 24 mm thick it stands lower than under the waist of 16.2.
        assertThat(signs.get(1).position().yMm()).isLessThan(signs.get(0).position().yMm() - 3);
    }

    @Test
    void oneSignIsEnoughAtOnePlace_theGraverOne() throws Exception {
        assertThat(signs(shucker(), at(Gravity.WARN, 9), at(Gravity.NOTE, 9.4)))
                .extracting(Text::string)
                .containsExactly("▲");
    }

    @Test
    void whatHasNoPlace_andWhatADimensionCovers_isLeftToTheList() throws Exception {
        Remark nowhere =
                new Remark(Gravity.WARN, "something", OptionalDouble.empty(), Optional.empty());
        // At the shoulder stand the extension lines of tenon and wood.
        assertThat(signs(shucker(), nowhere, at(Gravity.WARN, 0))).isEmpty();
    }
}
