package haftline.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class StarterCataloguesTest {
    @Test
    void everyFileReads() throws CatalogueException {
        Catalogues starter = CatalogueReader.starter();
        assertThat(starter.woods().size()).isGreaterThanOrEqualTo(60);
        assertThat(starter.stock().size()).isGreaterThan(starter.woods().size());
        assertThat(starter.metals().size()).isPositive();
        assertThat(starter.adhesives().size()).isPositive();
        assertThat(starter.drills().series().size()).isPositive();
        assertThat(starter.hands().size()).isEqualTo(8);
        assertThat(starter.grips().size()).isPositive();
        assertThat(starter.speeds().size()).isPositive();
        assertThat(starter.climates().size()).isPositive();
        assertThat(starter.dustLimits().size()).isPositive();
        assertThat(starter.woods().find("black-cherry").orElseThrow().densityKgM3(12))
                .isCloseTo(560, within(1e-9));
    }
}
