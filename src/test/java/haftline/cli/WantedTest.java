package haftline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.set.TemplateSettings;
import haftline.set.Workshop;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class WantedTest {
    private static Wanted only(String... words) {
        Only.Option option = new Only.Option();
        return Wanted.of(Arrays.stream(words).map(option::convert).toList());
    }

    private static Set<Part> parts(Wanted wanted, Format format) {
        Set<Part> parts = EnumSet.noneOf(Part.class);
        for (Part part : Part.values()) {
            if (wanted.has(part, format)) {
                parts.add(part);
            }
        }
        return parts;
    }

    private static TemplateSettings settings(Wanted wanted) {
        return wanted.over(Workshop.COMMON_PRACTICE.templates());
    }

    @Test
    void aKindOfFileStandsForEverythingOfThatKind() {
        Wanted dxf = only("dxf");
        assertThat(dxf.formats()).containsExactly(Format.DXF);
        assertThat(parts(dxf, Format.DXF)).contains(Part.DRAWINGS).containsAll(Part.TEMPLATES);
        assertThat(parts(dxf, Format.SVG)).isEmpty();
        assertThat(settings(dxf)).isEqualTo(Workshop.COMMON_PRACTICE.templates());
    }

    @Test
    void aPartComesInAllItsKindsOfFile() {
        Wanted gauges = only("gauges");
        assertThat(gauges.formats()).containsExactly(Format.SVG, Format.DXF, Format.PDF);
        assertThat(parts(gauges, Format.PDF)).isEqualTo(Part.GAUGES);
        assertThat(settings(gauges).copying().made()).isFalse();
        assertThat(settings(gauges).gauges().slots()).isTrue();
    }

    @Test
    void aPartComesInTheKindsThatAreNamedWithIt() {
        Wanted wanted = only("story-rod", "dxf");
        assertThat(wanted.templateFormats()).containsExactly(Format.DXF);
        assertThat(parts(wanted, Format.DXF)).containsExactly(Part.STORY_ROD);
        TemplateSettings.Gauges gauges = settings(wanted).gauges();
        assertThat(gauges.storyRod()).isTrue();
        assertThat(gauges.profile()).isFalse();
        assertThat(gauges.slots()).isFalse();
    }

    @Test
    void aKindInWhichNoNamedPartComesStandsForItself() {
        Wanted wanted = only("copying", "stl");
        assertThat(parts(wanted, Format.STL)).containsExactly(Part.SOLIDS);
        assertThat(wanted.templateFormats()).containsExactly(Format.SVG, Format.DXF, Format.PDF);
        assertThat(settings(wanted).copying().made()).isTrue();
    }

    @Test
    void whatIsNamedIsMadeWhateverTheWorkshopSays() {
        TemplateSettings usual = Workshop.COMMON_PRACTICE.templates();
        TemplateSettings none = usual.withGauges(usual.gauges().withMade(false, false, false));
        assertThat(only("profile-gauge").over(none).gauges().profile()).isTrue();
        assertThat(only("svg").over(none)).isEqualTo(none);
        assertThat(Wanted.everything().over(none)).isEqualTo(none);
    }
}
