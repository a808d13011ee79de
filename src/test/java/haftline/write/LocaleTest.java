package haftline.write;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.measure.NumberText;
import haftline.support.InLocale;
import haftline.support.SampleFiles;
import haftline.write.csv.CsvTable;
import haftline.write.csv.CsvWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

class LocaleTest {
    static final List<String> TAGS = InLocale.TAGS;

    @ParameterizedTest
    @FieldSource("TAGS")
    void everyFile_isTheSameUnderAnyDefaultLocale(String tag) {
        List<String> plain = InLocale.get("en-US", LocaleTest::everything);
        assertThat(InLocale.get(tag, LocaleTest::everything)).isEqualTo(plain);
    }

    @Test
    void locales_reallyDiffer() {
        List<String> formatted =
                InLocale.TAGS.stream()
                        .map(tag -> InLocale.get(tag, () -> String.format("%.1f%S", 1.5, "i")))
                        .toList();
        assertThat(formatted).doesNotContain(String.format(Locale.ROOT, "%.1f%S", 1.5, "i"));
    }

    private static List<String> everything() {
        List<String> out = new ArrayList<>();
        SampleFiles.drawings()
                .values()
                .forEach(
                        drawing -> {
                            out.add(SampleFiles.svg(drawing));
                            out.add(SampleFiles.dxf(drawing).text());
                        });
        CsvTable table =
                CsvTable.of(CsvTable.Column.number("diameter", "mm", 3), CsvTable.Column.text("in"))
                        .withRows(List.of(CsvTable.row(1234.5678, "INDIGO")));
        out.add(CsvWriter.write(table));
        out.add(FileName.from("IIII \u0130 Citrus Zester"));
        out.add(NumberText.shortest(-1234.5) + NumberText.fixed(-0.5, 3));
        return out;
    }
}
